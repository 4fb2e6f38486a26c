// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/goal_check.h"

#include <QtTest>
#include <cmath>

#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

namespace {

Position cutSetUp() {
  return setUpOf(cutDrill().stations[0], nineFoot());
}

GoalResult resultOf(const DrillGoal& goal, const std::vector<ShotReading>& shots) {
  return checkGoal(goal, nineFoot(), checkSetUp(cutDrill().stations[0], nineFoot(), shots.front().before), shots);
}

DrillGoal potGoal() {
  return cutDrill().stations[0].goals[0];
}

}  // namespace

class GoalCheckTest : public QObject {
  Q_OBJECT
 private slots:
  void aPotNeedsTheBallInItsPocket();
  void theBallThatStoodThereIsTheOneThatCounts();
  void aScratchSpoilsEveryGoal();
  void aBankNeedsItsCushionFirst();
  void aRestIsMeasuredFromItsZone();
  void aKickNeedsAsManyCushionsBeforeTheBall();
  void whatEventsAloneShowStaysOpenWithoutThem();
  void anOpenArcIsWhatTheBlockersLeave();
  void anAngleIsLeftFromWhereTheCueBallRests();
  void aMarkOnTheCushionIsMetAfterTheBall();
  void aStraightReturnPassesItsStart();
  void aCrookedReturnIsMeasuredWhereItPassesTheStart();
  void aRunCountsItsBalls();
  void aTouchedCushionIsSeenInEveryShot();
};

void GoalCheckTest::aPotNeedsTheBallInItsPocket() {
  ShotReading made = shot(cutSetUp(), at(1.2, 0.4));
  pot(made, 1, PocketName::FootLeft);
  QVERIFY(resultOf(potGoal(), {made}).met == true);
  ShotReading elsewhere = shot(cutSetUp(), at(1.2, 0.4));
  pot(elsewhere, 1, PocketName::FootRight);
  QVERIFY(resultOf(potGoal(), {elsewhere}).met == false);
  QVERIFY(resultOf(potGoal(), {shot(cutSetUp(), at(1.2, 0.4))}).met == false);
  DrillGoal any = potGoal();
  any.ball.reset();
  any.pocket.reset();
  QVERIFY(resultOf(any, {elsewhere}).met == true);
}

void GoalCheckTest::theBallThatStoodThereIsTheOneThatCounts() {
  const Position withTheNine{ball(0, 1.035, 0.218), ball(1, 0.2, 0.9), ball(9, 1.5, 0.5)};
  ShotReading made = shot(withTheNine, at(1.2, 0.4));
  pot(made, 9, PocketName::FootLeft);
  QVERIFY(resultOf(potGoal(), {made}).met == true);
  ShotReading other = shot(withTheNine, at(1.2, 0.4));
  pot(other, 1, PocketName::FootLeft);
  QVERIFY(resultOf(potGoal(), {other}).met == false);
}

void GoalCheckTest::aScratchSpoilsEveryGoal() {
  ShotReading scratched = shot(cutSetUp(), std::nullopt);
  pot(scratched, 1, PocketName::FootLeft);
  QVERIFY(resultOf(potGoal(), {scratched}).met == false);
  ShotReading foul = shot(cutSetUp(), at(1.2, 0.4));
  pot(foul, 1, PocketName::FootLeft);
  foul.outcome = Outcome::Foul;
  QVERIFY(resultOf(potGoal(), {foul}).met == false);
}

void GoalCheckTest::aBankNeedsItsCushionFirst() {
  DrillGoal bank = potGoal();
  bank.cushions = {CushionName::RightFoot};
  ShotReading banked = shot(cutSetUp(), at(1.2, 0.4));
  pot(banked, 1, PocketName::FootLeft);
  meetCushion(banked, 1, CushionName::RightFoot, at(1.6, 0.02));
  QVERIFY(resultOf(bank, {banked}).met == true);
  ShotReading straight = shot(cutSetUp(), at(1.2, 0.4));
  pot(straight, 1, PocketName::FootLeft);
  meetCushion(straight, 0, CushionName::RightFoot, at(1.6, 0.02));
  QVERIFY(resultOf(bank, {straight}).met == false);
}

void GoalCheckTest::aRestIsMeasuredFromItsZone() {
  const DrillGoal goal{GoalKind::Rest, {}, {}, {}, Zone{{{1.0, 0.5}}, 0.1}};
  const GoalResult inside = resultOf(goal, {shot(cutSetUp(), at(1.05, 0.5))});
  QVERIFY(inside.met == true);
  QCOMPARE(inside.figure, std::optional(0.0));
  const GoalResult outside = resultOf(goal, {shot(cutSetUp(), at(1.3, 0.9))});
  QVERIFY(outside.met == false);
  QVERIFY(std::abs(*outside.figure - 0.4 * Table{}.width_m) < 1e-12);
}

void GoalCheckTest::aKickNeedsAsManyCushionsBeforeTheBall() {
  const DrillGoal kick{GoalKind::Contact, BallName(1), {}, {CushionName::LeftFoot}};
  ShotReading kicked = shot(cutSetUp(), at(1.2, 0.4));
  meetCushion(kicked, 0, CushionName::Foot, at(1.97, 0.3));
  meetBall(kicked, 0, 1, at(1.5, 0.5));
  QVERIFY(resultOf(kick, {kicked}).met == true);
  ShotReading direct = shot(cutSetUp(), at(1.2, 0.4));
  meetBall(direct, 0, 1, at(1.5, 0.5));
  meetCushion(direct, 0, CushionName::Foot, at(1.97, 0.3));
  QVERIFY(resultOf(kick, {direct}).met == false);
  ShotReading missed = shot(cutSetUp(), at(1.2, 0.4));
  meetCushion(missed, 0, CushionName::Foot, at(1.97, 0.3));
  QVERIFY(resultOf(kick, {missed}).met == false);
}

void GoalCheckTest::whatEventsAloneShowStaysOpenWithoutThem() {
  ShotReading byHand = shot(cutSetUp(), at(1.2, 0.4));
  byHand.firstContact = BallName(1);
  QVERIFY(!resultOf({GoalKind::Contact, BallName(1), {}, {CushionName::LeftFoot}}, {byHand}).met.has_value());
  QVERIFY(resultOf({GoalKind::Contact, BallName(1)}, {byHand}).met == true);
  QVERIFY(!resultOf({GoalKind::NoCushion}, {byHand}).met.has_value());
  QVERIFY(!resultOf({GoalKind::Said}, {byHand}).met.has_value());
}

void GoalCheckTest::anOpenArcIsWhatTheBlockersLeave() {
  const double radius_m = nineFoot().balls.radius_m();
  const Position open{{kCueBall, {0.0, 0.0}}, {BallName(1), {0.8, 0.0}}};
  const double whole_rad = 2.0 * std::asin(2.0 * radius_m / 0.8);
  QVERIFY(std::abs(openArc_rad(open, {0.0, 0.0}, BallName(1), radius_m) - whole_rad) < 1e-12);
  // A nearer ball straight in between hides it wholly, for it is seen under the larger angle.
  Position hidden = open;
  hidden.push_back({BallName(2), {0.4, 0.0}});
  QCOMPARE(openArc_rad(hidden, {0.0, 0.0}, BallName(1), radius_m), 0.0);
  // Half way and aside so that its edge lies on the line of centres: half the arc is left.
  const double aside_rad = std::asin(2.0 * radius_m / 0.4);
  Position half = open;
  half.push_back({BallName(2), {0.4 * std::cos(aside_rad), 0.4 * std::sin(aside_rad)}});
  QVERIFY(std::abs(openArc_rad(half, {0.0, 0.0}, BallName(1), radius_m) - whole_rad / 2.0) < 1e-12);
  // A ball behind it hides nothing.
  Position behind = open;
  behind.push_back({BallName(2), {1.0, 0.0}});
  QVERIFY(std::abs(openArc_rad(behind, {0.0, 0.0}, BallName(1), radius_m) - whole_rad) < 1e-12);
}

void GoalCheckTest::anAngleIsLeftFromWhereTheCueBallRests() {
  const double radius_m = nineFoot().balls.radius_m();
  // The ball before the side pocket; the cue ball under 30 degrees to the ghost ball.
  const TablePoint object{0.0, 0.2};
  const TablePoint ghost{0.0, 0.2 - 2.0 * radius_m};
  const double cut_rad = 0.5235987755982988;
  const TablePoint rest{ghost.x + 0.4 * std::sin(cut_rad), ghost.y - 0.4 * std::cos(cut_rad)};
  QVERIFY(std::abs(cutLeft_rad(rest, object, PocketName::SideLeft, nineFoot()) - cut_rad) < 1e-9);
  DrillGoal goal{GoalKind::AngleLeft, BallName(2), PocketName::SideLeft, {}, {}, 0.2, 0.7};
  const Position before{{kCueBall, at(0.3, 0.3)}, {BallName(1), at(1.5, 0.5)}, {BallName(2), object}};
  QVERIFY(resultOf(goal, {shot(before, rest)}).met == true);
  goal.zone = rectangleZone({0.0, 0.0}, {1.0, 1.0});
  QVERIFY(resultOf(goal, {shot(before, rest)}).met == false);
  goal.zone.reset();
  goal.most_rad = 0.5;
  QVERIFY(resultOf(goal, {shot(before, rest)}).met == false);
}

void GoalCheckTest::aMarkOnTheCushionIsMetAfterTheBall() {
  const DrillGoal goal{
      GoalKind::MeetsCushion, {}, {}, {CushionName::RightFoot}, rectangleZone({1.75, 0.0}, {1.87, 0.045})};
  ShotReading on = shot(cutSetUp(), at(1.2, 0.4));
  meetBall(on, 0, 1, at(1.5, 0.5));
  meetCushion(on, 0, CushionName::RightFoot, at(1.85, 0.0225));
  const GoalResult met = resultOf(goal, {on});
  QVERIFY(met.met == true);
  QVERIFY(std::abs(*met.figure - 0.04 * Table{}.width_m) < 1e-12);
  ShotReading off = shot(cutSetUp(), at(1.2, 0.4));
  meetBall(off, 0, 1, at(1.5, 0.5));
  meetCushion(off, 0, CushionName::Foot, at(1.97, 0.2));
  QVERIFY(resultOf(goal, {off}).met == false);
}

void GoalCheckTest::aStraightReturnPassesItsStart() {
  const DrillGoal goal{GoalKind::ComesBack, {}, {}, {CushionName::Foot}, {}, 0.0, 0.0, 0.045};
  ShotReading straight = shot({ball(0, 0.5, 0.5)}, at(0.3, 0.5));
  meetCushion(straight, 0, CushionName::Foot, at(1.9775, 0.5));
  const GoalResult result = resultOf(goal, {straight});
  QVERIFY(result.met == true);
  QVERIFY(std::abs(*result.figure) < 1e-12);
  ShotReading tooShort = shot({ball(0, 0.5, 0.5)}, at(1.9, 0.5));
  QVERIFY(!resultOf(goal, {tooShort}).met.has_value());
  tooShort.delivery.whyNoStrike = NotShown::NotFitted;
  QVERIFY(resultOf(goal, {tooShort}).met == false);
}

void GoalCheckTest::aCrookedReturnIsMeasuredWhereItPassesTheStart() {
  const DrillGoal goal{GoalKind::ComesBack, {}, {}, {CushionName::Foot}, {}, 0.0, 0.0, 0.045};
  ShotReading crooked = shot({ball(0, 0.5, 0.5)}, at(0.3, 0.7));
  meetCushion(crooked, 0, CushionName::Foot, at(1.9775, 0.55));
  meetCushion(crooked, 0, CushionName::Head, at(0.0225, 0.65));
  // On the line from (1.9775, 0.55) to (0.0225, 0.65), at along 0.5.
  const double across = 0.55 + 0.1 * (1.9775 - 0.5) / (1.9775 - 0.0225);
  const GoalResult result = resultOf(goal, {crooked});
  QVERIFY(result.met == false);
  QVERIFY(std::abs(*result.figure - (across - 0.5) * Table{}.width_m) < 1e-9);
}

void GoalCheckTest::aRunCountsItsBalls() {
  const Position three{ball(0, 0.3, 0.3), ball(1, 1.0, 0.5), ball(2, 1.5, 0.4), ball(3, 1.2, 0.7)};
  ShotReading first = shot(three, at(0.8, 0.4));
  pot(first, 1, PocketName::SideLeft);
  ShotReading second = shot(first.after, at(0.8, 0.6));
  pot(second, 2, PocketName::FootLeft);
  QVERIFY(resultOf({GoalKind::Clear}, {first, second}).met == false);
  QCOMPARE(resultOf({GoalKind::Clear}, {first, second}).figure, std::optional(2.0));
  ShotReading third = shot(second.after, at(0.8, 0.6));
  pot(third, 3, PocketName::FootLeft);
  QVERIFY(resultOf({GoalKind::Clear}, {first, second, third}).met == true);
}

void GoalCheckTest::aTouchedCushionIsSeenInEveryShot() {
  ShotReading clean = shot(cutSetUp(), at(1.2, 0.4));
  meetBall(clean, 0, 1, at(1.5, 0.5));
  ShotReading touched = clean;
  meetCushion(touched, 0, CushionName::Head, at(0.0225, 0.4));
  QVERIFY(resultOf({GoalKind::NoCushion}, {clean, clean}).met == true);
  QVERIFY(resultOf({GoalKind::NoCushion}, {clean, touched}).met == false);
}

FERRULE_TEST(GoalCheckTest)
#include "goal_check_test.moc"
