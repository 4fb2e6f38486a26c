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
  void theNaturalPivotLengthFollows();
  void swerveMakesUpForSquirtAtTheDerivedElevation();
  void theEnergyFormOfTheStrikeMatches();
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
  QTest::newRow("15, 0.25") << 15.0 << 0.25 << 1.889;
  QTest::newRow("15, 0.4") << 15.0 << 0.4 << 2.899;
  QTest::newRow("15, 0.5") << 15.0 << 0.5 << 3.466;
  QTest::newRow("20, 0.1") << 20.0 << 0.1 << 0.6071;
  QTest::newRow("20, 0.25") << 20.0 << 0.25 << 1.485;
  QTest::newRow("20, 0.4") << 20.0 << 0.4 << 2.272;
  QTest::newRow("20, 0.5") << 20.0 << 0.5 << 2.709;
  QTest::newRow("25, 0.1") << 25.0 << 0.1 << 0.5005;
  QTest::newRow("25, 0.25") << 25.0 << 0.25 << 1.223;
  QTest::newRow("25, 0.4") << 25.0 << 0.4 << 1.868;
  QTest::newRow("25, 0.5") << 25.0 << 0.5 << 2.224;
  QTest::newRow("30, 0.1") << 30.0 << 0.1 << 0.4257;
  QTest::newRow("30, 0.25") << 30.0 << 0.25 << 1.04;
  QTest::newRow("30, 0.4") << 30.0 << 0.4 << 1.586;
  QTest::newRow("30, 0.5") << 30.0 << 0.5 << 1.886;
  QTest::newRow("40, 0.1") << 40.0 << 0.1 << 0.3278;
  QTest::newRow("40, 0.25") << 40.0 << 0.25 << 0.7999;
  QTest::newRow("40, 0.4") << 40.0 << 0.4 << 1.218;
  QTest::newRow("40, 0.5") << 40.0 << 0.5 << 1.446;
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

/// For small offsets the cue's line and the ball's way part as if the cue turned about a point L = R (7/5 + (2/5)
/// m/m_e) behind the ball: 211.5, 268.6, 325.8, 382.9, 497.2 mm (from the same formula).
void StrikeTest::theNaturalPivotLengthFollows() {
  for (const auto& [ratio, length_mm] :
       {std::pair{15.0, 211.5}, {20.0, 268.6}, {25.0, 325.8}, {30.0, 382.9}, {40.0, 497.2}}) {
    const PhysicsParameters p = cue(ratio);
    const double offset = 1e-4;
    const double angle = squirtOf({0.0, 1.0, offset, 0.0, 0.0}, p);
    COMPARE_WITHIN(1000.0 * p.ballRadius_m * offset / std::tan(angle), length_mm, 0.06);
  }
}

/// Squirt to one side, swerve to the other. With the spin of the impulse along the cue alone they cancel, once the ball
/// rolls, at tan θ = tan α/b: 4.88 degrees for mass ratio 25 and 0.25 R (from both formulas). The sideways impulse at
/// the tip takes some sidespin back, √(1 − b²) tan α of it in ball radii, so that here it takes a little more.
void StrikeTest::swerveMakesUpForSquirtAtTheDerivedElevation() {
  PhysicsParameters p = cue(25.0);
  p.slateRestitution = 0.0;
  const double offset = 0.25;
  const double slope = std::tan(squirtOf({0.0, 1.5, offset, 0.0, 0.0}, p));
  COMPARE_WITHIN(degreesFromRadians(std::atan(slope / offset)), 4.88, 6e-3);
  const double elevation = std::atan(slope / (offset - std::sqrt(1.0 - offset * offset) * slope));
  const auto ball = struckBall(kOrigin, {0.0, 1.5, offset, 0.0, elevation}, p);
  const Motion roll = motionAfter(freeMotion(*ball, 0.0, p), p);
  COMPARE_WITHIN(degreesFromRadians(direction(planOf(roll.velocity))), 0.0, 6e-3);
}

/// The strike as a share η of energy kept: v_b/v_s = (1 + √(η − (1 − η)(m_s/m) κ))/(κ + m/m_s), κ = 1 + (5/2) b²:
/// 1.2746, 1.1057, 0.74596 at 0, 0.25, 0.5 R for η = 0.87. Same form as Alciatore, technical proof A.30 (from memory).
void StrikeTest::theEnergyFormOfTheStrikeMatches() {
  PhysicsParameters p = referenceParameters();
  for (const auto& [offset, ratio] : {std::pair{0.0, 1.2746}, {0.25, 1.1057}, {0.5, 0.74596}}) {
    const auto restitution = tipRestitutionKeeping(0.87, offset, p);
    QVERIFY(restitution.has_value());
    p.tipRestitution = *restitution;
    const double ball = ballSpeedFromCueSpeed(1.0, offset, p);
    COMPARE_WITHIN(ball, ratio, 6e-5);
    // What is left of the cue's energy, in cue and ball with its spin.
    const double cueLeft = 1.0 - ball * p.ballMass_kg / p.cueMass_kg;
    const double kept = cueLeft * cueLeft + (1.0 + 2.5 * offset * offset) * ball * ball * p.ballMass_kg / p.cueMass_kg;
    COMPARE_WITHIN(kept, 0.87, 1e-12);
  }
  QVERIFY(!tipRestitutionKeeping(0.5, 0.0, p).has_value());
  QVERIFY(!tipRestitutionKeeping(1.1, 0.0, p).has_value());
  QVERIFY(!tipRestitutionKeeping(std::nan(""), 0.0, p).has_value());
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
                                                 {3.0, 0.25, 0.7506},
                                                 {3.0, 0.5, 1.501},
                                                 {5.0, 0.1, 0.5013},
                                                 {5.0, 0.25, 1.253},
                                                 {5.0, 0.5, 2.505},
                                                 {10.0, 0.1, 1.01},
                                                 {10.0, 0.25, 2.524},
                                                 {10.0, 0.5, 5.038},
                                                 {45.0, 0.1, 5.711},
                                                 {45.0, 0.25, 14.04},
                                                 {45.0, 0.5, 26.57},
                                                 {60.0, 0.1, 9.826},
                                                 {60.0, 0.25, 23.41},
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
