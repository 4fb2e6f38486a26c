// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/solve_aim.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "core/planner/shot_trials.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class SolveAimTest : public QObject {
  Q_OBJECT
 private slots:
  void theSolvedAimPotsTheBallWithAnySpin_data();
  void theSolvedAimPotsTheBallWithAnySpin();
  void throwIsMadeUpForByCuttingMore();
  void squirtIsMadeUpForOnTheSideOfTheTip();
  void anImpossibleShotHasNoAim();
};

namespace {

/// The foot spot ball to a corner, cut to the left from half a width away.
struct Cut {
  Position balls;
  double wanted_rad = 0.0;
  TablePoint ghost;
};

Cut cutOf(double cut_deg) {
  const TablePoint ball = footSpot(Table{});
  const double wanted_rad = direction(mouthOf(ninefoot().simulator().bed(), PocketName::FootLeft) - ball);
  const TablePoint ghost = ball - 2.0 * 0.028575 * TableVector{std::cos(wanted_rad), std::sin(wanted_rad)};
  const double back_rad = wanted_rad + std::numbers::pi - radiansFromDegrees(cut_deg);
  const TablePoint cue = ghost + 0.635 * TableVector{std::cos(back_rad), std::sin(back_rad)};
  return {{{kCueBall, cue}, {BallName(1), ball}}, wanted_rad, ghost};
}

std::optional<Strike> solved(const Cut& cut, Strike strike) {
  ShotWay way;
  way.balls = cut.balls;
  way.target = BallName(1);
  way.first = BallName(1);
  way.wanted_rad = [&cut](TablePoint) { return cut.wanted_rad; };
  strike.aim_rad = direction(cut.ghost - cut.balls[0].position);
  return solveAim(ninefoot().simulator(), way, strike, -0.635 / (2.0 * 0.028575));
}

}  // namespace

void SolveAimTest::theSolvedAimPotsTheBallWithAnySpin_data() {
  QTest::addColumn<double>("cut");
  QTest::addColumn<double>("side");
  QTest::addColumn<double>("height");
  QTest::addColumn<double>("speed");
  QTest::addColumn<double>("elevation");
  QTest::newRow("straight stun") << 0.0 << 0.0 << 0.0 << 2.0 << 0.0;
  QTest::newRow("follow") << 15.0 << 0.0 << 0.4 << 1.5 << 0.0;
  QTest::newRow("draw") << 30.0 << 0.0 << -0.4 << 3.0 << 0.0;
  QTest::newRow("outside side") << 30.0 << -0.4 << 0.1 << 2.5 << 0.0;
  QTest::newRow("inside side") << 30.0 << 0.4 << 0.1 << 1.5 << 0.0;
  QTest::newRow("thin") << 65.0 << 0.2 << 0.0 << 3.0 << 0.0;
  QTest::newRow("swerve") << 20.0 << 0.4 << 0.0 << 1.6 << 6.0;
}

void SolveAimTest::theSolvedAimPotsTheBallWithAnySpin() {
  QFETCH(double, cut);
  QFETCH(double, side);
  QFETCH(double, height);
  QFETCH(double, speed);
  QFETCH(double, elevation);
  const Cut position = cutOf(cut);
  const auto strike = solved(position, {0.0, speed, side, height, radiansFromDegrees(elevation)});
  QVERIFY(strike.has_value());
  const auto played = ninefoot().simulator().shoot(position.balls, *strike);
  const auto pocketed = pocketedIn(*played);
  QVERIFY(std::ranges::find(pocketed, PocketedBall{BallName(1), PocketName::FootLeft}) != pocketed.end());
}

/// Cut-induced throw sends a stunned ball too full: a 30 degree cut at 1 m/s contact speed is thrown by about 4.2
/// degrees, so the aim must be thinner than the ghost ball's. Source: Alciatore, technical proof A.28, throw plots.
void SolveAimTest::throwIsMadeUpForByCuttingMore() {
  Cut position = cutOf(30.0);
  const double geometric_rad = direction(position.ghost - position.balls[0].position);
  Strike stun{0.0, 1.6, 0.0, -0.28, 0.0};
  const auto strike = solved(position, stun);
  QVERIFY(strike.has_value());
  const double thinner_deg = degreesFromRadians(wrapAngle(strike->aim_rad - geometric_rad));
  // Aim gain for way 0.635 m at 30 degrees is 12.8: 1.5 to 5 degrees of throw is 0.12 to 0.4 degrees of aim.
  QVERIFY2(std::abs(thinner_deg) > 0.1 && std::abs(thinner_deg) < 0.5, qPrintable(QString::number(thinner_deg)));
  // A cue ball hits thinner when it aims farther away from the ball's line.
  QVERIFY(thinner_deg * (wrapAngle(position.wanted_rad - geometric_rad)) < 0.0);
}

void SolveAimTest::squirtIsMadeUpForOnTheSideOfTheTip() {
  const Cut position = cutOf(0.0);
  const auto right = solved(position, {0.0, 4.0, 0.4, 0.0, 0.0});
  const auto centre = solved(position, {0.0, 4.0, 0.0, 0.0, 0.0});
  QVERIFY(right && centre);
  // A tip on the right sends the ball to the left of the cue's line: the cue points more to the right.
  QVERIFY(wrapAngle(right->aim_rad - centre->aim_rad) < radiansFromDegrees(-1.0));
}

void SolveAimTest::anImpossibleShotHasNoAim() {
  Cut position = cutOf(100.0);
  QVERIFY(!solved(position, {0.0, 2.0, 0.0, 0.0, 0.0}).has_value());
}

FERRULE_TEST(SolveAimTest)
#include "solve_aim_test.moc"
