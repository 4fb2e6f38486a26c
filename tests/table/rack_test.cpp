// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/rack.h"

#include <QtTest>
#include <algorithm>
#include <cmath>
#include <set>

#include "core/table/surface_coordinates.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class RackTest : public QObject {
  Q_OBJECT
 private slots:
  void theEightStandsWhereTheDiagramPutsIt();
  void rearCornersHoldASolidAndAStripe();
  void aNineBallRackHasTheOneInFrontAndTheNineInTheMiddle();
  void theNineMayStandOnTheFootSpot();
  void aTenBallRackHasTheTenInTheMiddleOfItsThirdRow();
  void straightPoolRacksAllButTheBallThatStays();
  void racksAreTight();
  void racksAreAsDeepAsTheirGeometry();
  void everyRackIsMirroredInTheLongString();
  void theSameSeedRacksTheSame();
  void everyOpenPlaceSeesEveryBall();
  void surfacePlacesAreReadAsDrawn();
  void surfacePlacesSurviveTheWayBack();
};

namespace {

const Table kNineFoot;
const BallSet kBalls = poolBalls();

Position rackedWithSeed(RackKind kind, std::uint64_t seed, const RackOptions& options = {}) {
  Random random(seed);
  return racked(kind, kNineFoot, kBalls, random, options);
}

TablePoint placeOf(const Position& position, int number) {
  const auto found = std::ranges::find(position, BallName(number), &BallAt::ball);
  return found == position.end() ? TablePoint{99.0, 99.0} : found->position;
}

BallName ballAt(const Position& position, TablePoint place) {
  const auto found =
      std::ranges::find_if(position, [place](const BallAt& at) { return distance(at.position, place) < 1e-9; });
  return found == position.end() ? kCueBall : found->ball;
}

bool near(TablePoint a, double x, double y) {
  return distance(a, {x, y}) < 1e-4;
}

}  // namespace

/// Source: world rules of play, eight-ball: apex on the foot spot, the 8 in the middle of the third row. Worked out by
/// hand: 2 sqrt(3) R = 98.99 mm behind the foot spot, which is 635 mm from the centre of a 9-foot table.
void RackTest::theEightStandsWhereTheDiagramPutsIt() {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const Position rack = rackedWithSeed(RackKind::EightBall, seed);
    QCOMPARE(rack.size(), std::size_t{15});
    QVERIFY(near(placeOf(rack, 8), 0.635 + 0.09899, 0.0));
    QVERIFY(ballAt(rack, {0.635, 0.0}) != kCueBall);
  }
}

/// Source: world rules of play, eight-ball.
void RackTest::rearCornersHoldASolidAndAStripe() {
  const auto places = rackPlaces(RackKind::EightBall, kNineFoot, kBalls);
  bool solidOnTheLeft = false;
  bool solidOnTheRight = false;
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    const Position rack = rackedWithSeed(RackKind::EightBall, seed);
    const BallName left = ballAt(rack, places[10]);
    const BallName right = ballAt(rack, places[14]);
    QVERIFY(left.isSolid() != right.isSolid());
    QVERIFY(left.isStripe() != right.isStripe());
    (left.isSolid() ? solidOnTheLeft : solidOnTheRight) = true;
  }
  QVERIFY(solidOnTheLeft && solidOnTheRight);
}

/// Source: world rules of play, nine-ball (2008, 2016): 1 on the foot spot.
void RackTest::aNineBallRackHasTheOneInFrontAndTheNineInTheMiddle() {
  const Position rack = rackedWithSeed(RackKind::NineBall, 3);
  QCOMPARE(rack.size(), std::size_t{9});
  QVERIFY(near(placeOf(rack, 1), 0.635, 0.0));
  QVERIFY(near(placeOf(rack, 9), 0.635 + 0.09899, 0.0));
}

/// Source: reported world rules of 2025, nine-ball: the 9 on the foot spot. The 1 is then 1.4221 surface widths from
/// the head cushion of a 9-foot table, worked out by hand.
void RackTest::theNineMayStandOnTheFootSpot() {
  const Position rack = rackedWithSeed(RackKind::NineBall, 3, {.nineOnFootSpot = true});
  QVERIFY(near(placeOf(rack, 9), 0.635, 0.0));
  QVERIFY(std::abs(surfaceFromTable(kNineFoot, placeOf(rack, 1)).along - 1.4221) < 5e-5);
}

/// Source: world rules of play, ten-ball.
void RackTest::aTenBallRackHasTheTenInTheMiddleOfItsThirdRow() {
  const Position rack = rackedWithSeed(RackKind::TenBall, 3);
  QCOMPARE(rack.size(), std::size_t{10});
  QVERIFY(near(placeOf(rack, 1), 0.635, 0.0));
  QVERIFY(near(placeOf(rack, 10), 0.635 + 0.09899, 0.0));
}

/// Source: world rules of play, straight pool: 14 are racked again, the apex stays empty.
void RackTest::straightPoolRacksAllButTheBallThatStays() {
  QCOMPARE(rackedWithSeed(RackKind::StraightPool, 1).size(), std::size_t{15});
  const Position rest = rackedWithSeed(RackKind::StraightPoolRest, 1, {.leftOut = BallName(4)});
  QCOMPARE(rest.size(), std::size_t{14});
  QCOMPARE(ballAt(rest, {0.635, 0.0}), kCueBall);
  QVERIFY(placeOf(rest, 4) == (TablePoint{99.0, 99.0}));
}

void RackTest::racksAreTight() {
  const std::pair<RackKind, int> touches[] = {{RackKind::EightBall, 30},
                                              {RackKind::NineBall, 16},
                                              {RackKind::TenBall, 18},
                                              {RackKind::StraightPool, 30},
                                              {RackKind::StraightPoolRest, 28}};
  for (const auto& [kind, expected] : touches) {
    const auto places = rackPlaces(kind, kNineFoot, kBalls);
    int touching = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
      for (std::size_t j = 0; j < i; ++j) {
        const double gap_m = distance(places[i], places[j]) - kBalls.diameter_m;
        QVERIFY(gap_m > -1e-12);
        touching += gap_m < 1e-12 ? 1 : 0;
      }
    }
    QCOMPARE(touching, expected);
  }
}

/// Four rows of R sqrt(3): 197.97 mm from the apex's centre to the last row's, worked out by hand.
void RackTest::racksAreAsDeepAsTheirGeometry() {
  const auto places = rackPlaces(RackKind::EightBall, kNineFoot, kBalls);
  QVERIFY(std::abs(places.back().x - places.front().x - 0.19797) < 1e-5);
  QVERIFY(places[10].y > 0.0 && places[14].y < 0.0);
}

void RackTest::everyRackIsMirroredInTheLongString() {
  for (const RackKind kind : {RackKind::EightBall, RackKind::NineBall, RackKind::TenBall, RackKind::StraightPoolRest}) {
    const auto places = rackPlaces(kind, kNineFoot, kBalls);
    for (const TablePoint& place : places) {
      QVERIFY(std::ranges::any_of(places, [place](TablePoint p) { return distance(p, {place.x, -place.y}) < 1e-12; }));
    }
  }
}

void RackTest::theSameSeedRacksTheSame() {
  QVERIFY(rackedWithSeed(RackKind::EightBall, 5) == rackedWithSeed(RackKind::EightBall, 5));
  QVERIFY(rackedWithSeed(RackKind::EightBall, 5) != rackedWithSeed(RackKind::EightBall, 6));
}

/// Without a pattern: over many racks every ball but the fixed ones is seen in front.
void RackTest::everyOpenPlaceSeesEveryBall() {
  std::set<BallName> inFront;
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    const Position rack = rackedWithSeed(RackKind::EightBall, seed);
    QVERIFY(std::ranges::is_sorted(rack, {}, &BallAt::ball));
    inFront.insert(ballAt(rack, {0.635, 0.0}));
  }
  QCOMPARE(inFront.size(), std::size_t{14});
}

/// Source: world rules of play, definitions: strings, spots and pockets in widths of the surface from the head right
/// corner.
void RackTest::surfacePlacesAreReadAsDrawn() {
  QVERIFY(near(tableFromSurface(kNineFoot, {0.0, 0.0}), -1.27, -0.635));
  QVERIFY(near(tableFromSurface(kNineFoot, {2.0, 1.0}), 1.27, 0.635));
  QVERIFY(tableFromSurface(kNineFoot, {0.5, 0.5}) == headSpot(kNineFoot));
  QVERIFY(tableFromSurface(kNineFoot, {1.0, 0.5}) == centreSpot(kNineFoot));
  QVERIFY(tableFromSurface(kNineFoot, {1.5, 0.5}) == footSpot(kNineFoot));
  QVERIFY(near(tableFromSurface(kNineFoot, {1.0, 0.0}), 0.0, -0.635));
  Table odd;
  odd.length_m = 2.235;
  odd.width_m = 1.118;
  QVERIFY(tableFromSurface(odd, {1.5, 0.5}) == footSpot(odd));
}

void RackTest::surfacePlacesSurviveTheWayBack() {
  const SurfacePlace place{1.115, 0.339};
  const SurfacePlace back = surfaceFromTable(kNineFoot, tableFromSurface(kNineFoot, place));
  QVERIFY(std::abs(back.along - place.along) < 1e-12);
  QVERIFY(std::abs(back.across - place.across) < 1e-12);
}

FERRULE_TEST(RackTest)
#include "rack_test.moc"
