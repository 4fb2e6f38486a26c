// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/reread_shot.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "core/reading/shot_reader.h"
#include "tests/reading/synthetic_play.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::synthetic;

namespace {

const BallName kThree{3};
const BallName kNine{9};

/// The 3 is played at the foot-left pocket and misses it by a little; the 9 lies apart.
ReadShot filmedMiss(double speed_mps = 1.8) {
  const MeasuredTable measured = nineFeet();
  const Pocket pocket = pockets(measured.table)[static_cast<std::size_t>(PocketName::FootLeft)];
  const TablePoint ball{0.2, 0.1};
  const TableVector way = unit(pocket.mouth - ball);
  Play play(measured, {{kCueBall, ball - 0.5 * way}, {kThree, ball}, {kNine, {-0.8, -0.4}}});
  play.strike({1.5, direction(way) + 0.02, speed_mps, 0.0});
  ShotReader reader(measured);
  for (const ImageReading& reading : play.film(12.0, {60.0, 0.0004, 0.0, 5}))
    reader.feed(reading);
  reader.finish();
  auto shots = reader.takeShots();
  if (shots.size() != 1) qFatal("the film shows one shot");
  return std::move(shots.front());
}

TablePoint mouth(PocketName name) {
  return pockets(nineFeet().table)[static_cast<std::size_t>(name)].mouth;
}

}  // namespace

class RereadShotTest : public QObject {
  Q_OBJECT
 private slots:
  void aShotReadAgainFromItsTracksIsTheSame();
  void anotherPocketGivesAnotherLine();
  void thePotThatWasReadIsTheSameWhenItIsNamed();
  void aBallThatCameOffARailHasNoLineToAFarPocket();
  void withoutAPotThatWasMeantThereIsNoMiss();
  void whatAPersonSaidOfTheResultStays();
  void withoutTracksTheCutComesFromThePlaces();
  void swappedTracksTellOfTheOtherBall();
  void aBallThatNobodyFollowedStaysWhereItWas();
};

void RereadShotTest::aShotReadAgainFromItsTracksIsTheSame() {
  const ReadShot shot = filmedMiss();
  QVERIFY(shot.reading.target.has_value());
  const ShotReading again = rereadShot(shot.reading, shot.tracks, nineFeet());
  QCOMPARE(again.number, shot.reading.number);
  QCOMPARE(again.firstContact, shot.reading.firstContact);
  QCOMPARE(again.pocketed, shot.reading.pocketed);
  QCOMPARE(again.outcome, shot.reading.outcome);
  QCOMPARE(again.events.size(), shot.reading.events.size());
  QCOMPARE(again.target->pocket, shot.reading.target->pocket);
  QVERIFY(std::abs(again.strike_s - shot.reading.strike_s) < 0.002);
  QVERIFY(std::abs(*again.target->lineError_rad - *shot.reading.target->lineError_rad) < 0.001);
  QVERIFY(std::abs(again.delivery.aim_rad->value - shot.reading.delivery.aim_rad->value) <
          2.0 * shot.reading.delivery.aim_rad->standardUncertainty);
  QCOMPARE(again.after.size(), shot.reading.after.size());
}

/// The ball stopped on its way: to another pocket it is off by the angle between the two.
void RereadShotTest::anotherPocketGivesAnotherLine() {
  const ReadShot shot = filmedMiss(0.7);
  const ShotReading& measured = shot.reading;
  const auto called = [&](PocketName pocket) {
    return rereadTarget(measured, shot.tracks, nineFeet(), PocketedBall{kThree, pocket}, false);
  };
  const ShotReading near = called(PocketName::FootLeft);
  const ShotReading far = called(PocketName::SideLeft);
  QVERIFY(near.target->called && far.target->called);
  QVERIFY(near.target->lineError_rad && far.target->lineError_rad);
  QVERIFY(std::abs(*near.target->lineError_rad) < 0.26);  // half a metre makes 20 mrad of aim 10 degrees
  const TablePoint ball = ballIn(measured.before, kThree)->position;
  const double between_rad =
      wrapAngle(direction(mouth(PocketName::FootLeft) - ball) - direction(mouth(PocketName::SideLeft) - ball));
  const double change_rad = wrapAngle(*far.target->lineError_rad - *near.target->lineError_rad);
  // Its place is known to two tenths of a millimetre half a metre away.
  QVERIFY2(std::abs(change_rad - between_rad) < 4e-4, qPrintable(QString::number(change_rad - between_rad)));
  QVERIFY(far.target->missSide.has_value());
  // Nothing else was said.
  QCOMPARE(far.delivery, measured.delivery);
  QCOMPARE(far.events, measured.events);
  QCOMPARE(far.after, measured.after);
  QCOMPARE(far.outcome, Outcome::Miss);
}

/// What was read from the tracks alone holds when a person says the same.
void RereadShotTest::thePotThatWasReadIsTheSameWhenItIsNamed() {
  const ReadShot shot = filmedMiss();
  const Target& read = *shot.reading.target;
  const ShotReading named =
      rereadTarget(shot.reading, shot.tracks, nineFeet(), PocketedBall{read.ball, read.pocket}, false);
  QVERIFY(named.target->called && !read.called);
  QVERIFY(read.missSide.has_value());
  QCOMPARE(named.target->missSide, read.missSide);
  QVERIFY(std::abs(*named.target->lineError_rad - *read.lineError_rad) < 0.001);
  QCOMPARE(named.missAccount.has_value(), shot.reading.missAccount.has_value());
  QCOMPARE(named.outcome, Outcome::Miss);
}

/// Off a cushion and far from the straight line: nobody knows which way was meant.
void RereadShotTest::aBallThatCameOffARailHasNoLineToAFarPocket() {
  const ReadShot shot = filmedMiss();
  const ShotReading far =
      rereadTarget(shot.reading, shot.tracks, nineFeet(), PocketedBall{kThree, PocketName::SideLeft}, false);
  QVERIFY(far.target->cut_rad.has_value());
  QVERIFY(!far.target->lineError_rad && !far.target->missSide && !far.missAccount);
}

void RereadShotTest::withoutAPotThatWasMeantThereIsNoMiss() {
  const ReadShot shot = filmedMiss();
  QCOMPARE(shot.reading.outcome, Outcome::Miss);
  const ShotReading safety = rereadTarget(shot.reading, shot.tracks, nineFeet(), std::nullopt, false);
  QVERIFY(!safety.target && !safety.missAccount);
  QCOMPARE(safety.outcome, Outcome::Safety);
}

void RereadShotTest::whatAPersonSaidOfTheResultStays() {
  ReadShot shot = filmedMiss();
  shot.reading.outcome = Outcome::Safety;
  const PocketedBall meant{kThree, PocketName::FootLeft};
  QCOMPARE(rereadTarget(shot.reading, shot.tracks, nineFeet(), meant, true).outcome, Outcome::Safety);
  QCOMPARE(rereadTarget(shot.reading, shot.tracks, nineFeet(), meant, false).outcome, Outcome::Miss);
}

void RereadShotTest::withoutTracksTheCutComesFromThePlaces() {
  ShotReading reading;
  reading.number = 4;
  reading.before = {{kCueBall, {0.0, 0.0}}, {kThree, {0.5, 0.0}}};
  reading.outcome = Outcome::Safety;
  const ShotReading called = rereadTarget(reading, {}, nineFeet(), PocketedBall{kThree, PocketName::FootRight}, false);
  const TableVector way = unit(mouth(PocketName::FootRight) - TablePoint{0.5, 0.0});
  const TableVector aim = TablePoint{0.5, 0.0} - 2.0 * nineFeet().balls.radius_m() * way - TablePoint{0.0, 0.0};
  QVERIFY(std::abs(*called.target->cut_rad - std::abs(wrapAngle(direction(way) - direction(aim)))) < 1e-9);
  QVERIFY(!called.target->lineError_rad);
  QCOMPARE(called.outcome, Outcome::Miss);
}

void RereadShotTest::swappedTracksTellOfTheOtherBall() {
  ReadShot shot = filmedMiss();
  QVERIFY(shot.reading.firstContact == kThree);
  const SwappedNames names{kThree, kNine, std::nullopt};
  swapNames(shot.tracks, names);
  for (Position* balls : {&shot.reading.before, &shot.reading.after}) {
    std::swap((*balls)[1].position, (*balls)[2].position);
  }
  const ShotReading again = rereadShot(shot.reading, shot.tracks, nineFeet());
  QVERIFY(again.firstContact == kNine);
  QVERIFY(again.target->ball == kNine);
  QVERIFY(distance(ballIn(again.after, kThree)->position, {-0.8, -0.4}) < 0.001);
}

void RereadShotTest::aBallThatNobodyFollowedStaysWhereItWas() {
  ReadShot shot = filmedMiss();
  const TablePoint place{-1.0, 0.5};
  shot.reading.after.push_back({BallName(12), place});
  const ShotReading again = rereadShot(shot.reading, shot.tracks, nineFeet());
  QVERIFY(ballIn(again.after, BallName(12)) != nullptr);
  QVERIFY(ballIn(again.after, BallName(12))->position == place);
}

FERRULE_TEST(RereadShotTest)
#include "reread_shot_test.moc"
