// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/scatter.h"

#include <QtTest>

#include "core/geometry/units.h"
#include "core/planner/chances.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class ScatterTest : public QObject {
  Q_OBJECT
 private slots:
  void theAimThatIsScatteredIsTheBallsDeparture();
  void levelsAreOrdered();
  void theCueIsRaisedOverRailsAndBalls();
  void awkwardStancesScatterWider();
};

/// The mean and the spread of the departure are those asked for, whatever the tip does: 4000 draws give them within
/// 5 standard errors.
void ScatterTest::theAimThatIsScatteredIsTheBallsDeparture() {
  const PhysicsParameters p;
  const Scatter scatter{radiansFromDegrees(0.2), 0.05, 0.05, 0.05, 0.0};
  const Strike asked{0.3, 2.0, 0.35, 0.1, 0.02};
  const double meant_rad = asked.aim_rad - strikeDeparting(0.0, asked, p).aim_rad;
  const auto deviates = commonDeviates(5, 4000);
  double sum = 0.0;
  double squares = 0.0;
  double speed = 0.0;
  for (const Deviates& d : deviates) {
    const auto ball = struckBall({0.0, 0.0, p.ballRadius_m}, delivered(asked, scatter, d, p), p);
    QVERIFY(ball.has_value());
    const double error_rad = std::atan2(ball->velocity.y, ball->velocity.x) - meant_rad;
    sum += error_rad;
    squares += error_rad * error_rad;
    speed += length(ball->velocity);
  }
  const double n = 4000.0;
  const double spread_rad = std::sqrt(squares / n);
  QVERIFY(std::abs(sum / n) < 5.0 * scatter.aim_rad / std::sqrt(n));
  QVERIFY(std::abs(spread_rad / scatter.aim_rad - 1.0) < 5.0 / std::sqrt(2.0 * n));
  QVERIFY(std::abs(speed / n / 2.0 - 1.0) < 0.01);
}

void ScatterTest::levelsAreOrdered() {
  for (const auto field : {&Scatter::aim_rad, &Scatter::speed, &Scatter::side, &Scatter::height}) {
    QVERIFY(scatterOf(PlayerLevel::Expert).*field < scatterOf(PlayerLevel::Club).*field);
    QVERIFY(scatterOf(PlayerLevel::Club).*field < scatterOf(PlayerLevel::Beginner).*field);
  }
  for (const PlayerLevel level : kPlayerLevels)
    QCOMPARE(playerLevelFromText(toText(level)), std::optional(level));
}

void ScatterTest::theCueIsRaisedOverRailsAndBalls() {
  const Bed& bed = ninefoot().simulator().bed();
  const auto elevation_deg = [&](const Position& balls, double x, double aim_deg) {
    return degreesFromRadians(stanceOf(bed, balls, {x, 0.0}, radiansFromDegrees(aim_deg)).leastElevation_rad);
  };
  // In the middle of the table the cue is almost level; frozen to the head cushion it must rise.
  QVERIFY(elevation_deg({}, 0.0, 0.0) < 1.5);
  const double frozen_deg = elevation_deg({}, -1.27 + 0.028575, 0.0);
  QVERIFY2(frozen_deg > 10.0 && frozen_deg < 40.0, qPrintable(QString::number(frozen_deg)));
  // From a rail, away along it, no rail is behind.
  QVERIFY(elevation_deg({}, -1.27 + 0.028575, 90.0) < 2.0);
  // A ball right behind, and one beside the cue's line.
  QVERIFY(elevation_deg({{BallName(1), {-0.07, 0.0}}}, 0.0, 0.0) > 20.0);
  QVERIFY(elevation_deg({{BallName(1), {-0.07, 0.05}}}, 0.0, 0.0) < 1.5);
}

void ScatterTest::awkwardStancesScatterWider() {
  const Scatter base = scatterOf(PlayerLevel::Club);
  const Scatter plain = scatterFor(base, {}, 0.0, 0.5);
  QCOMPARE(plain, base);
  Stance stance;
  stance.stretched = true;
  QVERIFY(scatterFor(base, stance, 0.0, 0.5).aim_rad > base.aim_rad);
  stance = {};
  stance.railBridge = true;
  QVERIFY(scatterFor(base, stance, 0.0, 0.5).side > base.side);
  stance = {};
  stance.overBall = true;
  QVERIFY(scatterFor(base, stance, 0.4, 0.5).aim_rad > 1.5 * base.aim_rad);
  QVERIFY(scatterFor(base, {}, 0.0, 2.2).aim_rad > 1.1 * base.aim_rad);
}

FERRULE_TEST(ScatterTest)
#include "scatter_test.moc"
