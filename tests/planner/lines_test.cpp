// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/geometry/units.h"
#include "core/planner/candidate.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class LinesTest : public QObject {
  Q_OBJECT
 private slots:
  void aLineIsBlockedWithinABallsWidthAndTheClearance();
  void theCornerWindowAgreesWithTheMouthModel();
  void pocketsOfOneKindHaveMirroredWindows();
  void aFastBallNeedsABetterAimAlongTheRail();
  void everyOpenPotIsFoundAndNoBlockedOne();
  void aCombinationIsFoundWhereItIsOpen();
  void aBankIsFoundForABallThatLiesStraightAcross();
};

namespace {

constexpr double kRadius_m = 0.028575;

}  // namespace

void LinesTest::aLineIsBlockedWithinABallsWidthAndTheClearance() {
  Layout layout = layoutOf({{BallName(3), {0.5, 0.0}}});
  const TablePoint from{0.0, 0.0};
  const TablePoint to{1.0, 0.0};
  for (const double beside_m : {0.0, 0.05, 2.0 * kRadius_m + kClearance_m - 1e-6}) {
    layout.place[3].y = beside_m;
    QVERIFY(!isOpen(layout, from, to, {}, kRadius_m));
  }
  layout.place[3].y = 2.0 * kRadius_m + kClearance_m + 1e-6;
  QVERIFY(isOpen(layout, from, to, {}, kRadius_m));
  layout.place[3].y = 0.0;
  QVERIFY(isOpen(layout, from, to, BallMask::of(BallName(3)), kRadius_m));
}

/// Foot spot to a corner with a mouth of 114.3 to 117.5 mm: half window atan((mouth − D) / 2 d), 1.82 to 1.93 degrees
/// by the simple mouth model. The rails' noses let a slow ball off the jaw in: the simulated window is wider, and by
/// the published remarks on facings never twice the mouth's. Source: the mouth model, Alciatore, "Just how big are the
/// pockets" (from memory).
void LinesTest::theCornerWindowAgreesWithTheMouthModel() {
  const auto window = pocketWindow(ninefoot().simulator(), PocketName::FootLeft, footSpot(Table{}), 2.0);
  QVERIFY(window.has_value());
  const double model_rad = std::atan((cornerPocketShape().mouth_m - 2.0 * kRadius_m) / 2.0 / 0.898);
  QVERIFY2(window->halfWidth_rad > 0.9 * model_rad && window->halfWidth_rad < 2.0 * model_rad,
           qPrintable(QString::number(degreesFromRadians(window->halfWidth_rad))));
  QVERIFY(std::abs(degreesFromRadians(window->middle_rad) - 45.0) < 0.5);
  const PocketWindow read = ninefoot().windows().at(PocketName::FootLeft, footSpot(Table{}), 2.0);
  QVERIFY(std::abs(read.halfWidth_rad / window->halfWidth_rad - 1.0) < 0.25);
  QVERIFY(std::abs(wrapAngle(read.middle_rad - window->middle_rad)) < radiansFromDegrees(0.3));
}

void LinesTest::pocketsOfOneKindHaveMirroredWindows() {
  const PocketWindows& windows = ninefoot().windows();
  const TablePoint place{0.31, 0.17};
  const PocketWindow left = windows.at(PocketName::FootLeft, place, 1.5);
  const PocketWindow right = windows.at(PocketName::FootRight, {place.x, -place.y}, 1.5);
  const PocketWindow head = windows.at(PocketName::HeadLeft, {-place.x, place.y}, 1.5);
  QVERIFY(std::abs(left.middle_rad + right.middle_rad) < 1e-12);
  QVERIFY(std::abs(wrapAngle(std::numbers::pi - head.middle_rad - left.middle_rad)) < 1e-12);
  QCOMPARE(left.halfWidth_rad, right.halfWidth_rad);
}

/// A ball that comes along the rail touches the cushion before the pocket: at speed it rattles out. Common practice, no
/// source.
void LinesTest::aFastBallNeedsABetterAimAlongTheRail() {
  const TablePoint along{0.3, 0.635 - kRadius_m - 0.001};
  const auto slow = pocketWindow(ninefoot().simulator(), PocketName::FootLeft, along, 0.9);
  const auto fast = pocketWindow(ninefoot().simulator(), PocketName::FootLeft, along, 4.0);
  QVERIFY(slow.has_value());
  QVERIFY(!fast || fast->halfWidth_rad < slow->halfWidth_rad);
}

void LinesTest::everyOpenPotIsFoundAndNoBlockedOne() {
  const PlanningTable table{ninefoot().simulator(), ninefoot().windows()};
  const Scatter scatter = scatterOf(PlayerLevel::Expert);
  Position balls{ballAt(0, 0.8, 0.3), ballAt(1, 1.5, 0.75)};
  const auto finds = [&](const Position& position) {
    const auto found = directCandidates(table, situationOf(Game::EightBall, position, "solids"), scatter);
    return std::ranges::any_of(found, [](const Candidate& c) { return c.plan.pocket == PocketName::FootLeft; });
  };
  QVERIFY(finds(balls));
  // A ball on the object ball's way to the pocket.
  Position closed = balls;
  closed.push_back(ballAt(9, 1.75, 0.875));
  QVERIFY(!finds(closed));
  // A ball on the cue ball's way to the ghost.
  closed.back() = ballAt(9, 1.15, 0.525);
  QVERIFY(!finds(closed));
  // The opponent's ball is no target.
  QVERIFY(std::ranges::none_of(directCandidates(table, situationOf(Game::EightBall, closed, "solids"), scatter),
                               [](const Candidate& c) { return c.plan.ball == BallName(9); }));
}

void LinesTest::aCombinationIsFoundWhereItIsOpen() {
  const PlanningTable table{ninefoot().simulator(), ninefoot().windows()};
  // The 1 on the line of the 9 to the corner, nine-ball: playing the 1 into the 9 wins.
  const Position balls{ballAt(0, 1.2, 0.4), ballAt(1, 1.55, 0.65), ballAt(9, 1.75, 0.79)};
  const auto found = combinationCandidates(table, situationOf(Game::NineBall, balls), scatterOf(PlayerLevel::Expert));
  QVERIFY(std::ranges::any_of(found, [](const Candidate& c) {
    return c.plan.first == BallName(1) && c.plan.ball == BallName(9) && c.plan.pocket == PocketName::FootLeft;
  }));
}

/// Drill position "straight-back bank to the side". Source: common practice, no source.
void LinesTest::aBankIsFoundForABallThatLiesStraightAcross() {
  const PlanningTable table{ninefoot().simulator(), ninefoot().windows()};
  const Position balls{ballAt(0, 1.18, 0.65), ballAt(1, 1.15, 0.35)};
  const auto found = bankCandidates(table, situationOf(Game::EightBall, balls, "solids"), scatterOf(PlayerLevel::Club));
  QVERIFY(std::ranges::any_of(
      found, [](const Candidate& c) { return c.plan.pocket == PocketName::SideLeft && c.plan.cushions == 1; }));
}

FERRULE_TEST(LinesTest)
#include "lines_test.moc"
