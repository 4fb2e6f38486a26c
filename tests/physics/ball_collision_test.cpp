// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/ball_collision.h"

#include <QtTest>

#include "core/base/random.h"
#include "core/geometry/units.h"
#include "core/physics/motion.h"
#include "core/physics/strike.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class BallCollisionTest : public QObject {
  Q_OBJECT
 private slots:
  void stunSpeedsSplitAsPublished();
  void inelasticBallsPartByLessThanARightAngle();
  void theLostEnergyFollowsRestitution();
  void aRollingCueBallDeflectsAsPublished_data();
  void aRollingCueBallDeflectsAsPublished();
  void mostDrawComesBackAtTwiceTheCut();
  void theLargestNaturalAngleIsNearHalfBall();
  void cutInducedThrowMatchesThePublishedLaw_data();
  void cutInducedThrowMatchesThePublishedLaw();
  void spinInducedThrowPeaksAndThenFalls();
  void gearingSidespinThrowsNothing();
  void throwFallsWithSpeedAndIsLargestForStun();
  void theThreeDimensionalCaseMatches();
  void ballFrictionFollowsTheFitToMarlow();
  void momentumIsKeptAndEnergyNeverRises();
  void aHeadOnRollPassesOnTheRollDistance();
  void twoBallsStruckAtOnceShareTheBlowEvenly();
  void ballsThatPartAreLeftAlone();
};

namespace {

PhysicsParameters with(double restitution, BallFriction friction) {
  PhysicsParameters p = referenceParameters();
  p.ballRestitution = restitution;
  p.ballFriction = friction;
  return p;
}

const BallFriction kNone = constantBallFriction(0.0);

struct Pair {
  BallState cue;
  BallState object;
};

/// The cue ball moves along x; the line of centres lies at the cut angle, counter-clockwise.
Pair hit(double speed, double cut_deg, Vector3 spinSpeed, const PhysicsParameters& p) {
  Pair pair;
  pair.cue = moving({speed, 0.0, 0.0}, spinSpeed, p);
  const double cut = radiansFromDegrees(cut_deg);
  pair.object =
      ballAtRest(BallName(1), {2.0 * p.ballRadius_m * std::cos(cut), 2.0 * p.ballRadius_m * std::sin(cut)}, p);
  collideBalls(pair.cue, pair.object, p);
  return pair;
}

double heading_deg(Vector3 v) {
  return degreesFromRadians(std::atan2(v.y, v.x));
}

/// Angle by which the object ball leaves the line of centres toward the cue ball's way.
double throw_deg(double speed, double cut_deg, Vector3 spinSpeed, const PhysicsParameters& p) {
  return cut_deg - heading_deg(horizontal(planOf(hit(speed, cut_deg, spinSpeed, p).object.velocity)));
}

/// Direction of the cue ball once it rolls.
double finalHeading_deg(double cut_deg, double spinSpeed, double restitution) {
  const PhysicsParameters p = with(restitution, kNone);
  const Motion slide = freeMotion(hit(1.0, cut_deg, {0.0, spinSpeed, 0.0}, p).cue, 0.0, p);
  return heading_deg(motionAfter(slide, p).velocity);
}

}  // namespace

/// Alciatore, technical proof 3.2 (rev. 2013): 20 degrees 93.969 and 34.202 of 100; 45 degrees 70.711 both.
void BallCollisionTest::stunSpeedsSplitAsPublished() {
  const PhysicsParameters p = with(1.0, kNone);
  for (const auto& [cut, object, cue] :
       {std::tuple{20.0, 93.969, 34.202}, {45.0, 70.711, 70.711}, {70.0, 34.202, 93.969}}) {
    const Pair pair = hit(100.0, cut, {}, p);
    COMPARE_WITHIN(length(pair.object.velocity), object, 6e-4);
    COMPARE_WITHIN(length(pair.cue.velocity), cue, 6e-4);
  }
}

/// atan2(sin φ, (1 − e)/2 cos φ): numbers from this formula.
void BallCollisionTest::inelasticBallsPartByLessThanARightAngle() {
  struct Row {
    double e, cut, angle;
  };
  for (const Row& row :
       {Row{1.0, 15, 90}, Row{0.98, 15, 87.863}, Row{0.95, 30, 87.521}, Row{0.95, 60, 89.173}, Row{0.90, 45, 87.138}}) {
    const Pair pair = hit(2.0, row.cut, {}, with(row.e, kNone));
    COMPARE_WITHIN(heading_deg(pair.object.velocity) - heading_deg(pair.cue.velocity), row.angle, 6e-4);
  }
}

/// ¼ m (1 − e²) (v cos φ)².
void BallCollisionTest::theLostEnergyFollowsRestitution() {
  const PhysicsParameters p = with(0.95, kNone);
  const Pair pair = hit(2.0, 30.0, {}, p);
  const double before = 0.5 * p.ballMass_kg * 4.0;
  const double normal = 2.0 * std::cos(radiansFromDegrees(30.0));
  COMPARE_WITHIN(before - energy_J(pair.cue, p) - energy_J(pair.object, p),
                 0.25 * p.ballMass_kg * (1.0 - 0.95 * 0.95) * normal * normal, 1e-12);
}

/// tan θ = sin φ cos φ / (sin² φ + (2/5) s); Sorokin, Ball motion properties in stun and follow shots (2014), gives the
/// same structure.
void BallCollisionTest::aRollingCueBallDeflectsAsPublished_data() {
  QTest::addColumn<double>("cut");
  QTest::addColumn<double>("e100");
  QTest::addColumn<double>("e95");
  QTest::addColumn<double>("e90");
  QTest::newRow("10") << 10.0 << 21.681 << 20.150 << 18.748;
  QTest::newRow("three quarter ball") << 14.4775122 << 27.626 << 25.905 << 24.297;
  QTest::newRow("20") << 20.0 << 31.868 << 30.170 << 28.552;
  QTest::newRow("half ball") << 30.0 << 33.670 << 32.265 << 30.894;
  QTest::newRow("45") << 45.0 << 29.055 << 28.113 << 27.181;
  QTest::newRow("quarter ball") << 48.5903779 << 27.267 << 26.422 << 25.583;
  QTest::newRow("75") << 75.0 << 10.622 << 10.350 << 10.077;
}

void BallCollisionTest::aRollingCueBallDeflectsAsPublished() {
  QFETCH(double, cut);
  QFETCH(double, e100);
  QFETCH(double, e95);
  QFETCH(double, e90);
  COMPARE_WITHIN(-finalHeading_deg(cut, 1.0, 1.0), e100, 6e-4);
  COMPARE_WITHIN(-finalHeading_deg(cut, 1.0, 0.95), e95, 6e-4);
  COMPARE_WITHIN(-finalHeading_deg(cut, 1.0, 0.90), e90, 6e-4);
}

/// s = −1.25, e = 1: θ = 180° − 2 φ exactly; s = −1: 143.10, 109.11, 78.690, 51.052 degrees (from the same formula).
void BallCollisionTest::mostDrawComesBackAtTwiceTheCut() {
  for (const double cut : {15.0, 30.0, 45.0, 60.0}) {
    COMPARE_WITHIN(-finalHeading_deg(cut, -1.25, 1.0), 180.0 - 2.0 * cut, 1e-9);
  }
  for (const auto& [cut, angle] : {std::pair{15.0, 143.10}, {30.0, 109.11}, {45.0, 78.690}, {60.0, 51.052}}) {
    COMPARE_WITHIN(-finalHeading_deg(cut, -1.0, 1.0), angle, 6e-3);
  }
}

/// Sorokin (2014): at most 33.7 degrees, at a fullness of about 0.53.
void BallCollisionTest::theLargestNaturalAngleIsNearHalfBall() {
  double best = 0.0;
  double at = 0.0;
  for (double cut = 20.0; cut < 40.0; cut += 0.01) {
    const double angle = -finalHeading_deg(cut, 1.0, 1.0);
    if (angle > best) {
      best = angle;
      at = cut;
    }
  }
  COMPARE_WITHIN(best, 33.7490, 5e-5);
  COMPARE_WITHIN(1.0 - std::sin(radiansFromDegrees(at)), 0.5286, 2e-3);
}

/// Alciatore, technical proofs A.14 (from memory) and A.28 (2007): elastic hit, no sidespin; degrees.
void BallCollisionTest::cutInducedThrowMatchesThePublishedLaw_data() {
  QTest::addColumn<double>("cut");
  QTest::addColumn<double>("speed");
  QTest::addColumn<double>("stun");
  QTest::addColumn<double>("roll");
  QTest::newRow("15, 0.5") << 15.0 << 0.5 << 2.192 << 1.077;
  QTest::newRow("15, 3") << 15.0 << 3.0 << 2.192 << 0.209;
  QTest::newRow("30, 0.5") << 30.0 << 0.5 << 4.715 << 2.080;
  QTest::newRow("30, 1") << 30.0 << 1.0 << 4.154 << 1.327;
  QTest::newRow("30, 2") << 30.0 << 2.0 << 2.653 << 0.636;
  QTest::newRow("45, 1") << 45.0 << 1.0 << 3.433 << 1.877;
  QTest::newRow("45, 3") << 45.0 << 3.0 << 1.185 << 0.570;
  QTest::newRow("60, 0.5") << 60.0 << 0.5 << 4.424 << 3.599;
  QTest::newRow("60, 2") << 60.0 << 2.0 << 1.510 << 1.102;
}

void BallCollisionTest::cutInducedThrowMatchesThePublishedLaw() {
  QFETCH(double, cut);
  QFETCH(double, speed);
  QFETCH(double, stun);
  QFETCH(double, roll);
  const PhysicsParameters p = with(1.0, BallFriction{});
  COMPARE_WITHIN(throw_deg(speed, cut, {}, p), stun, 6e-4);
  COMPARE_WITHIN(throw_deg(speed, cut, {0.0, speed, 0.0}, p), roll, 6e-4);
}

/// Head-on stun at 1 m/s: most throw 4.13 degrees at a tip offset of 0.202 R; at 0.5 R only 2.16 (law as above).
/// That more sidespin throws less past the peak: Alciatore, throw (physics resource pages).
void BallCollisionTest::spinInducedThrowPeaksAndThenFalls() {
  const PhysicsParameters p = with(1.0, BallFriction{});
  const auto thrown = [&](double offset) { return std::abs(throw_deg(1.0, 0.0, {0.0, 0.0, 2.5 * offset}, p)); };
  double best = 0.0;
  double at = 0.0;
  for (double offset = 0.0; offset <= 0.5; offset += 0.001) {
    if (thrown(offset) > best) {
      best = thrown(offset);
      at = offset;
    }
  }
  COMPARE_WITHIN(best, 4.13, 6e-3);
  COMPARE_WITHIN(at, 0.202, 2e-3);
  COMPARE_WITHIN(thrown(0.5), 2.16, 6e-3);
}

/// R ωz = v sin φ, tip offset (2/5) sin φ: the "40 % rule" of Alciatore's physics resource pages.
void BallCollisionTest::gearingSidespinThrowsNothing() {
  for (const double speed : {0.5, 1.0, 3.0}) {
    for (const double cut : {15.0, 30.0, 45.0, 60.0}) {
      const double spin = 2.5 * speed * 0.4 * std::sin(radiansFromDegrees(cut));
      COMPARE_WITHIN(throw_deg(speed, cut, {0.0, 0.0, spin}, with(0.95, BallFriction{})), 0.0, 1e-9);
    }
  }
}

/// Alciatore, throw (physics resource pages): less at higher speed, most for stun, outside side reverses it.
void BallCollisionTest::throwFallsWithSpeedAndIsLargestForStun() {
  const PhysicsParameters p = with(0.95, BallFriction{});
  QVERIFY(throw_deg(3.0, 40.0, {}, p) < throw_deg(1.0, 40.0, {}, p));
  QVERIFY(throw_deg(1.0, 40.0, {0.0, 1.0, 0.0}, p) < throw_deg(1.0, 40.0, {}, p));
  QVERIFY(throw_deg(1.0, 40.0, {0.0, -1.0, 0.0}, p) < throw_deg(1.0, 40.0, {}, p));
  QVERIFY(throw_deg(1.0, 40.0, {0.0, 0.0, 1.2}, p) < 0.0);
  // With a thick friction-limited cut a little outside side makes the grip better, and the throw larger.
  QVERIFY(throw_deg(2.0, 60.0, {0.0, 0.0, 1.2}, p) > throw_deg(2.0, 60.0, {}, p));
}

/// Rolling cue ball, line of centres at 30 degrees, e = 0.95: once sliding with μ = 0.06, once sticking. Numbers from
/// the impulse equations.
void BallCollisionTest::theThreeDimensionalCaseMatches() {
  const PhysicsParameters slide = with(0.95, constantBallFriction(0.06));
  const double radius = slide.ballRadius_m;
  const Pair s = hit(2.0, 30.0, {0.0, 2.0, 0.0}, slide);
  const double slideRows[][2] = {
      {s.cue.velocity.x, 0.51217},         {s.cue.velocity.y, -0.80050},         {s.cue.velocity.z, 0.08775},
      {s.object.velocity.x, 1.48783},      {s.object.velocity.y, 0.80050},       {s.object.velocity.z, -0.08775},
      {radius * s.cue.spin.x, 0.10969},    {radius * s.cue.spin.y, 1.81002},     {radius * s.cue.spin.z, 0.12666},
      {radius * s.object.spin.x, 0.10969}, {radius * s.object.spin.y, -0.18998}, {radius * s.object.spin.z, 0.12666}};
  for (const auto& row : slideRows)
    COMPARE_WITHIN(row[0], row[1], 6e-6);
  COMPARE_WITHIN(heading_deg(horizontal(planOf(s.object.velocity))), 28.282, 6e-4);
  COMPARE_WITHIN(energy_J(s.cue, slide) + energy_J(s.object, slide), 0.43523, 6e-6);

  const PhysicsParameters stick = with(0.95, constantBallFriction(2.0));
  const Pair g = hit(2.0, 30.0, {0.0, 2.0, 0.0}, stick);
  const double stickRows[][2] = {{g.cue.velocity.x, 0.46607},    {g.cue.velocity.y, -0.72066},
                                 {g.cue.velocity.z, 0.24744},    {g.object.velocity.x, 1.53393},
                                 {g.object.velocity.y, 0.72066}, {g.object.velocity.z, -0.24744}};
  for (const auto& row : stickRows)
    COMPARE_WITHIN(row[0], row[1], 6e-6);
  COMPARE_WITHIN(heading_deg(horizontal(planOf(g.object.velocity))), 25.165, 6e-4);
  COMPARE_WITHIN(energy_J(g.cue, stick) + energy_J(g.object, stick), 0.41500, 6e-6);
}

/// Alciatore, technical proof A.28 (2007), after Marlow (1995), table 10.
void BallCollisionTest::ballFrictionFollowsTheFitToMarlow() {
  const BallFriction friction;
  for (const auto& [slip, value] : {std::pair{0.0, 0.11795},
                                    {0.070711, 0.10995},
                                    {0.5, 0.072637},
                                    {0.70711, 0.05999},
                                    {1.0, 0.046335},
                                    {2.0, 0.022208},
                                    {3.0, 0.01408},
                                    {7.0711, 0.010000}}) {
    COMPARE_WITHIN(friction.at(slip), value, 6e-6);
  }
}

void BallCollisionTest::momentumIsKeptAndEnergyNeverRises() {
  Random random(7);
  const auto vector = [&](double scale) {
    return Vector3{scale * random.normal(), scale * random.normal(), scale * random.normal()};
  };
  for (int round = 0; round < 5000; ++round) {
    const double e = round % 2 == 0 ? 1.0 : random.uniform();
    const PhysicsParameters p = with(e, round % 4 == 0 ? kNone : constantBallFriction(random.uniform()));
    BallState a{kCueBall, {0.0, 0.0, p.ballRadius_m}, vector(2.0), vector(80.0)};
    BallState b{BallName(1), a.position + 2.0 * p.ballRadius_m * unit(vector(1.0)), vector(1.0), vector(40.0)};
    const BallState a0 = a;
    const BallState b0 = b;
    collideBalls(a, b, p);
    const Vector3 momentum = a.velocity + b.velocity - a0.velocity - b0.velocity;
    QVERIFY(length(momentum) < 1e-13);
    QVERIFY(length((a.spin - a0.spin) - (b.spin - b0.spin)) < 1e-11);
    const double before = energy_J(a0, p) + energy_J(b0, p);
    const double after = energy_J(a, p) + energy_J(b, p);
    QVERIFY(after <= before * (1.0 + 1e-14));
    const double closing = approachSpeed(a0, b0);
    if (round % 4 == 0 && closing > kLeastBounce_mps) QVERIFY(std::abs(after - before) < 1e-13 * before);
    if (closing > kLeastBounce_mps) COMPARE_WITHIN(approachSpeed(a, b), -e * closing, 1e-12);
  }
}

/// Elastic: object ball 5/7, cue ball 2/7 of the speed once both roll; 0.69643 and 0.30357 for e = 0.95.
void BallCollisionTest::aHeadOnRollPassesOnTheRollDistance() {
  for (const auto& [e, object, cue] : {std::tuple{1.0, 5.0 / 7.0, 2.0 / 7.0}, {0.95, 0.69643, 0.30357}}) {
    const PhysicsParameters p = with(e, kNone);
    const Pair pair = hit(1.0, 0.0, {0.0, 1.0, 0.0}, p);
    COMPARE_WITHIN(motionAfter(freeMotion(pair.object, 0.0, p), p).velocity.x, object, 6e-6);
    COMPARE_WITHIN(motionAfter(freeMotion(pair.cue, 0.0, p), p).velocity.x, cue, 6e-6);
  }
}

/// Three balls in a triangle, elastic and smooth: the cue ball stops short of v/5 backwards, the others leave at
/// 2√3/5 v along their lines. Source: momentum and energy of the symmetric case (a textbook exercise; our derivation).
void BallCollisionTest::twoBallsStruckAtOnceShareTheBlowEvenly() {
  const PhysicsParameters p = with(1.0, kNone);
  const double side = 2.0 * p.ballRadius_m;
  std::vector<BallState> balls{moving({1.0, 0.0, 0.0}, {}, p),
                               ballAtRest(BallName(1), {side * std::sqrt(3.0) / 2.0, side / 2.0}, p),
                               ballAtRest(BallName(2), {side * std::sqrt(3.0) / 2.0, -side / 2.0}, p)};
  const TouchingPair pairs[] = {{0, 1}, {0, 2}};
  collideCluster(balls, pairs, p);
  COMPARE_WITHIN(balls[0].velocity.x, -0.2, 1e-12);
  COMPARE_WITHIN(balls[0].velocity.y, 0.0, 1e-15);
  COMPARE_WITHIN(length(balls[1].velocity), 2.0 * std::sqrt(3.0) / 5.0, 1e-12);
  QCOMPARE(balls[1].velocity.y, -balls[2].velocity.y);
  QCOMPARE(balls[1].velocity.x, balls[2].velocity.x);
}

void BallCollisionTest::ballsThatPartAreLeftAlone() {
  const PhysicsParameters p = referenceParameters();
  BallState a = moving({-1.0, 0.2, 0.0}, {0.0, 1.0, 0.0}, p);
  BallState b = ballAtRest(BallName(1), {2.0 * p.ballRadius_m, 0.0}, p);
  const BallState a0 = a;
  collideBalls(a, b, p);
  QCOMPARE(a, a0);
}

FERRULE_TEST(BallCollisionTest)
#include "ball_collision_test.moc"
