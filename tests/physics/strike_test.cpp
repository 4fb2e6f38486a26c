// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/strike.h"

#include <QtTest>

#include "core/geometry/intersections.h"
#include "core/geometry/units.h"
#include "core/physics/motion.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class StrikeTest : public QObject {
  Q_OBJECT
 private slots:
  void cueSpeedMakesThePublishedBallSpeed();
  void spinIsFiveHalvesOfTheOffset();
  void squirtFollowsThePublishedFormula_data();
  void squirtFollowsThePublishedFormula();
  void squirtIsOddAndNothingForACentreHit();
  void theMiscueLimitIsTheFrictionCone();
  void aStrikePastTheLimitIsRefused();
  void aMasseEndsAlongCoriolisLine();
  void sidespinOnAnElevatedCueSwervesAsDerived();
  void anElevatedPowerShotHops();
  void theDepartureCanBeAskedFor();
  void theAimForACurvedWayPassesThroughTheTarget();
  void nonsenseIsRefusedByName();
};

namespace {

PhysicsParameters cue(double massRatio) {
  PhysicsParameters p = referenceParameters();
  p.squirtMassRatio = massRatio;
  return p;
}

const TablePoint3 kOrigin{0.0, 0.0, 0.028575};

}  // namespace

/// (1 + e)/(1 + (5/2) b² + m/m_s), cue 0.539 kg, e = 0.75; other rows in the order of the table. Compare Alciatore,
/// technical proof A.30 (from memory).
void StrikeTest::cueSpeedMakesThePublishedBallSpeed() {
  PhysicsParameters p = referenceParameters();
  for (const auto& [offset, ratio, cueAfter] : {std::tuple{0.0, 1.3304, 0.58039},
                                                {0.1, 1.3056, 0.58822},
                                                {0.2, 1.2364, 0.61004},
                                                {0.3, 1.1361, 0.64168},
                                                {0.4, 1.0202, 0.67824},
                                                {0.5, 0.90188, 0.71555}}) {
    const double ball = ballSpeedFromCueSpeed(1.0, offset, p);
    COMPARE_WITHIN(ball, ratio, 6e-5);
    COMPARE_WITHIN(1.0 - ball * p.ballMass_kg / p.cueMass_kg, cueAfter, 2e-5);
    COMPARE_WITHIN(cueSpeedFromBallSpeed(ball, offset, p), 1.0, 1e-14);
  }
  for (const auto& [restitution, mass, ratio] : {std::tuple{1.0, 0.539, 1.5205},
                                                 {0.87, 0.539, 1.4216},
                                                 {0.73, 0.539, 1.3152},
                                                 {0.75, 0.567, 1.3463},
                                                 {0.75, 0.482, 1.2937}}) {
    p.tipRestitution = restitution;
    p.cueMass_kg = mass;
    COMPARE_WITHIN(ballSpeedFromCueSpeed(1.0, 0.0, p), ratio, 6e-5);
  }
}

/// ω = 5 v b/(2 R²): 131.23, 65.6 and 26.2 rad/s at 3 m/s; 0.4 R rolls at once. Alciatore, spin-speed ratio (physics
/// resource pages).
void StrikeTest::spinIsFiveHalvesOfTheOffset() {
  const PhysicsParameters p = cue(0.0);
  for (const auto& [offset, spin_rpm] : {std::pair{0.5, 1253.2}, {0.25, 626.6}, {0.1, 250.6}}) {
    const auto side = struckBall(kOrigin, {0.0, 3.0, offset, 0.0, 0.0}, p);
    QVERIFY(side.has_value());
    COMPARE_WITHIN(side->spin.z * 60.0 / (2.0 * M_PI), spin_rpm, 0.06);
    const auto draw = struckBall(kOrigin, {0.0, 3.0, 0.0, -offset, 0.0}, p);
    COMPARE_WITHIN(draw->spin.y * 60.0 / (2.0 * M_PI), -spin_rpm, 0.06);
  }
  const auto follow = struckBall(kOrigin, {0.7, 2.0, 0.0, 0.4, 0.0}, p);
  QCOMPARE(freeMotion(*follow, 0.0, p).kind, MotionKind::Rolling);
}

/// tan α = (5/2) b √(1 − b²)/(1 + m/m_e + (5/2)(1 − b²)). Alciatore, technical proof A.31 (from memory).
void StrikeTest::squirtFollowsThePublishedFormula_data() {
  QTest::addColumn<double>("ratio");
  QTest::addColumn<double>("offset");
  QTest::addColumn<double>("angle");
  QTest::newRow("15, 0.1") << 15.0 << 0.1 << 0.7714;
  QTest::newRow("15, 0.5") << 15.0 << 0.5 << 3.466;
  QTest::newRow("20, 0.25") << 20.0 << 0.25 << 1.485;
  QTest::newRow("25, 0.25") << 25.0 << 0.25 << 1.223;
  QTest::newRow("25, 0.5") << 25.0 << 0.5 << 2.224;
  QTest::newRow("30, 0.4") << 30.0 << 0.4 << 1.586;
  QTest::newRow("40, 0.1") << 40.0 << 0.1 << 0.3278;
}

void StrikeTest::squirtFollowsThePublishedFormula() {
  QFETCH(double, ratio);
  QFETCH(double, offset);
  QFETCH(double, angle);
  const PhysicsParameters p = cue(ratio);
  const Strike strike{0.3, 2.0, offset, 0.0, 0.0};
  COMPARE_WITHIN(degreesFromRadians(squirtOf(strike, p)), angle, 6e-4);
  const auto ball = struckBall(kOrigin, strike, p);
  // A tip point on the right sends the ball to the left.
  COMPARE_WITHIN(degreesFromRadians(direction(planOf(ball->velocity)) - 0.3), angle, 6e-4);
  COMPARE_WITHIN(length(ball->velocity), 2.0, 1e-12);
}

void StrikeTest::squirtIsOddAndNothingForACentreHit() {
  const PhysicsParameters p = cue(25.0);
  QCOMPARE(squirtOf({0.0, 1.0, 0.0, 0.3, 0.0}, p), 0.0);
  QCOMPARE(squirtOf({0.0, 1.0, 0.3, 0.1, 0.0}, p), -squirtOf({0.0, 1.0, -0.3, 0.1, 0.0}, p));
  QCOMPARE(squirtOf({0.0, 1.0, 0.3, 0.1, 0.0}, cue(0.0)), 0.0);
}

/// μ/√(1 + μ²): 0.5145, 0.4998, 0.5735.
void StrikeTest::theMiscueLimitIsTheFrictionCone() {
  PhysicsParameters p;
  for (const auto& [friction, limit] : {std::pair{0.6, 0.5145}, {0.577, 0.4998}, {0.7, 0.5735}}) {
    p.tipFriction = friction;
    COMPARE_WITHIN(miscueLimit(p), limit, 6e-5);
  }
}

void StrikeTest::aStrikePastTheLimitIsRefused() {
  const PhysicsParameters p;
  const auto refused = struckBall(kOrigin, {0.0, 2.0, 0.4, 0.4, 0.0}, p);
  QVERIFY(!refused.has_value());
  QCOMPARE(refused.error().code, ErrorCode::StrikePastMiscue);
  QVERIFY(struckBall(kOrigin, {0.0, 2.0, 0.3, 0.4, 0.0}, p).has_value());
}

/// Coriolis (1835), told by Alciatore, Billiards Digest, November 2005: the ball ends along the line from its resting
/// point to where the cue's line meets the cloth, at (5/7) v0 tan θ a/R. Cue at 60 degrees, v0 = 2, a = (−0.3, 0.4) R.
void StrikeTest::aMasseEndsAlongCoriolisLine() {
  PhysicsParameters p = cue(0.0);
  p.tipFriction = 5.0;       // the case lies past the miscue limit
  p.slateRestitution = 0.0;  // and without a hop
  const double elevation = radiansFromDegrees(60.0);
  const double height = -0.3 * std::sin(elevation) - std::cos(elevation);
  const auto ball = struckBall(kOrigin, {0.0, 2.0, -0.4, height, elevation}, p);
  QVERIFY(ball.has_value());
  COMPARE_WITHIN(p.ballRadius_m * ball->spin.x, -3.4641, 6e-5);
  COMPARE_WITHIN(p.ballRadius_m * ball->spin.y, -7.5981, 6e-5);
  COMPARE_WITHIN(p.ballRadius_m * ball->spin.z, -2.0, 1e-12);
  const Motion slide = freeMotion(*ball, 0.0, p);
  COMPARE_WITHIN(slide.end_s, 1.4860, 6e-5);
  const Motion roll = motionAfter(slide, p);
  COMPARE_WITHIN(roll.velocity.x, -0.74231, 6e-6);
  COMPARE_WITHIN(roll.velocity.y, 0.98974, 6e-6);
  COMPARE_WITHIN(degreesFromRadians(direction(planOf(roll.velocity))), 126.870, 6e-4);
  COMPARE_WITHIN(roll.position.x, 0.93444, 6e-6);
  COMPARE_WITHIN(roll.position.y, 0.73536, 6e-6);
}

/// Side only: final swerve atan(b tan θ) to the side of the tip point (from Coriolis's line).
void StrikeTest::sidespinOnAnElevatedCueSwervesAsDerived() {
  PhysicsParameters p = cue(0.0);
  p.slateRestitution = 0.0;
  for (const auto& [elevation, offset, angle] : {std::tuple{3.0, 0.1, 0.3003},
                                                 {3.0, 0.5, 1.501},
                                                 {5.0, 0.25, 1.253},
                                                 {10.0, 0.5, 5.038},
                                                 {45.0, 0.25, 14.04},
                                                 {60.0, 0.5, 40.89}}) {
    const auto ball = struckBall(kOrigin, {0.0, 1.5, offset, 0.0, radiansFromDegrees(elevation)}, p);
    QVERIFY(ball.has_value());
    const Motion roll = motionAfter(freeMotion(*ball, 0.0, p), p);
    COMPARE_WITHIN(-degreesFromRadians(direction(planOf(roll.velocity))), angle, 6e-3);
  }
}

/// 5 degrees, 5 m/s along the cue, slate 0.5: up at 0.21789 m/s, 2.42 mm high (launch formulas).
void StrikeTest::anElevatedPowerShotHops() {
  PhysicsParameters p = cue(0.0);
  const double elevation = radiansFromDegrees(5.0);
  const auto ball = struckBall(kOrigin, {0.0, 5.0 * std::cos(elevation), 0.0, 0.0, elevation}, p);
  COMPARE_WITHIN(ball->velocity.z, 0.21789, 6e-6);
  QCOMPARE(freeMotion(*ball, 0.0, p).kind, MotionKind::Airborne);
  const auto soft = struckBall(kOrigin, {0.0, 0.5, 0.0, 0.0, elevation}, p);
  QCOMPARE(soft->velocity.z, 0.0);
}

void StrikeTest::theDepartureCanBeAskedFor() {
  const PhysicsParameters p = cue(25.0);
  for (const double departure : {-2.5, 0.0, 1.0, 3.1}) {
    for (const double elevation_deg : {0.0, 8.0, 50.0}) {
      const Strike strike = strikeDeparting(departure, {0.0, 2.0, -0.35, 0.2, radiansFromDegrees(elevation_deg)}, p);
      const auto ball = struckBall(kOrigin, strike, p);
      COMPARE_WITHIN(wrapAngle(direction(planOf(ball->velocity)) - departure), 0.0, 1e-12);
    }
  }
}

void StrikeTest::theAimForACurvedWayPassesThroughTheTarget() {
  const PhysicsParameters p = cue(25.0);
  const TablePoint start{-0.6, 0.1};
  const TablePoint target{0.5, -0.2};
  for (const double elevation_deg : {0.0, 5.0, 20.0, 45.0}) {
    const auto strike = strikeThrough(start, target, {0.0, 3.0, 0.3, 0.1, radiansFromDegrees(elevation_deg)}, p);
    QVERIFY(strike.has_value());
    Motion m = freeMotion(*struckBall({start.x, start.y, p.ballRadius_m}, *strike, p), 0.0, p);
    double nearest = 1.0;
    while (m.moves()) {
      for (int i = 0; i < 2000; ++i) {
        const double step = (m.end_s - m.start_s) / 2000.0;
        const TableSegment chord{planOf(m.positionAt(m.start_s + i * step)),
                                 planOf(m.positionAt(m.start_s + (i + 1) * step))};
        nearest = std::min(nearest, distanceToSegment(target, chord));
      }
      m = motionAfter(m, p);
    }
    QVERIFY2(nearest < 2e-5, qPrintable(QString::number(nearest)));
  }
  QVERIFY(!strikeThrough(start, target, {0.0, 0.2, 0.0, 0.0, 0.0}, p).has_value());
}

void StrikeTest::nonsenseIsRefusedByName() {
  const PhysicsParameters p;
  const auto refusal = [&](const Strike& strike) {
    const auto ball = struckBall(kOrigin, strike, p);
    return ball ? std::string() : ball.error().detail;
  };
  QCOMPARE(refusal({std::nan(""), 1.0, 0.0, 0.0, 0.0}), std::string("aim_deg"));
  QCOMPARE(refusal({0.0, -1.0, 0.0, 0.0, 0.0}), std::string("speed_m_s"));
  QCOMPARE(refusal({0.0, HUGE_VAL, 0.0, 0.0, 0.0}), std::string("speed_m_s"));
  QCOMPARE(refusal({0.0, 1.0, std::nan(""), 0.0, 0.0}), std::string("side"));
  QCOMPARE(refusal({0.0, 1.0, 0.0, 0.0, 1.6}), std::string("elevation_deg"));
}

FERRULE_TEST(StrikeTest)
#include "strike_test.moc"
