// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/cushion_impact.h"

#include <QtTest>
#include <boost/numeric/odeint.hpp>

#include "core/geometry/units.h"
#include "core/physics/motion.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class CushionImpactTest : public QObject {
  Q_OBJECT
 private slots:
  void theNoseTouchesAboveTheCentre();
  void theIntegratedModelMatchesItsOwnTable_data();
  void theIntegratedModelMatchesItsOwnTable();
  void theIntegratedModelMatchesThePoolNumbers();
  void theIntegratedModelAgreesWithAnIndependentIntegrator();
  void theImpulseModelMatchesItsOwnNumbers_data();
  void theImpulseModelMatchesItsOwnNumbers();
  void aNoseAtCentreHeightGivesTheTextbookRebound();
  void energyNeverRisesAndNoBallComesBackFaster();
  void doubleSpeedDoublesEverything();
  void mirroredInputGivesMirroredOutput();
  void runningSideLengthensAndCheckSideShortens();
  void aHigherNoseIsSlower();
};

namespace {

constexpr double kDegree = M_PI / 180.0;

/// Snooker ball and cushion of Mathavan et al. (2010): sin Θ = 0.4.
PhysicsParameters snooker() {
  PhysicsParameters p;
  p.ballRadius_m = 0.02625;
  p.ballMass_kg = 0.1406;
  p.slidingFriction = 0.212;
  p.cushionRestitution = 0.98;
  p.cushionFriction = 0.14;
  return p;
}

PhysicsParameters pool(double restitution, double friction) {
  PhysicsParameters p = referenceParameters();
  p.cushionRestitution = restitution;
  p.cushionFriction = friction;
  return p;
}

/// Along +y into a cushion on the left, with x along the rail. spinSpeed: R ω.
BallState toward(double angle_deg, double speed, double roll, double side, const PhysicsParameters& p) {
  const Vector3 v{speed * std::sin(angle_deg * kDegree), speed * std::cos(angle_deg * kDegree), 0.0};
  return {kCueBall, {0.0, 0.0, p.ballRadius_m}, v, rollingSpin(roll * v, side / p.ballRadius_m, p.ballRadius_m)};
}

CushionContact nose(double sine, const PhysicsParameters& p) {
  return clothContact({0.0, 1.0}, (1.0 + sine) * p.ballRadius_m, p.ballRadius_m);
}

/// (along the rail, away from it).
void compareOut(const BallState& s, double along, double normal, double tolerance) {
  COMPARE_WITHIN(s.velocity.x, along, tolerance);
  COMPARE_WITHIN(-s.velocity.y, normal, tolerance);
}

}  // namespace

/// World specification: 63.5 % of the diameter, sin Θ = 0.27; snooker 0.7 of the diameter, sin Θ = 0.4.
void CushionImpactTest::theNoseTouchesAboveTheCentre() {
  const CushionContact contact = clothContact({1.0, 0.0}, 0.635 * 0.05715, 0.028575);
  COMPARE_WITHIN(contact.toward.z, 0.27, 1e-12);
  COMPARE_WITHIN(std::asin(contact.toward.z) / kDegree, 15.664, 6e-4);
  COMPARE_WITHIN(length(contact.toward), 1.0, 1e-15);
}

/// Mathavan, Jackson and Parkin (2010), constants e = 0.98, μ = 0.14: our own solution of the stated model, four
/// digits.
void CushionImpactTest::theIntegratedModelMatchesItsOwnTable_data() {
  QTest::addColumn<double>("angle");
  QTest::addColumn<double>("roll");
  QTest::addColumn<double>("side");
  QTest::addColumn<double>("along");
  QTest::addColumn<double>("normal");
  QTest::addColumn<double>("spinX");
  QTest::addColumn<double>("spinY");
  QTest::addColumn<double>("spinZ");
  QTest::addColumn<double>("rollsNormal");
  QTest::addColumn<double>("rollsAngle");
  QTest::newRow("square stun") << 0.0 << 0.0 << 0.0 << 0.0 << 0.8374 << -0.078 << 0.0 << 0.0 << 0.5757 << 0.0;
  QTest::newRow("square roll") << 0.0 << 1.0 << 0.0 << 0.0 << 0.9107 << -0.2352 << 0.0 << 0.0 << 0.5833 << 0.0;
  QTest::newRow("square backspin") << 0.0 << -1.0 << 0.0 << 0.0 << 0.8659 << 0.1527 << 0.0 << 0.0 << 0.6621 << 0.0;
  QTest::newRow("30 stun") << 30.0 << 0.0 << 0.0 << 0.2575 << 0.7416 << -0.082 << 0.108 << 0.326 << 0.5064 << 22.97;
  QTest::newRow("30 roll") << 30.0 << 1.0 << 0.0 << 0.3132 << 0.8086 << -0.203 << 0.313 << 0.428 << 0.5197 << 31.08;
  QTest::newRow("45 stun") << 45.0 << 0.0 << 0.0 << 0.4206 << 0.6288 << -0.033 << 0.087 << 0.412 << 0.4397 << 36.48;
  QTest::newRow("45 roll") << 45.0 << 1.0 << 0.0 << 0.5139 << 0.6741 << -0.1825 << 0.5139 << 0.4427 << 0.4293 << 50.12;
  QTest::newRow("45 running") << 45.0 << 1.0 << 1.0 << 0.6861 << 0.6441 << -0.167 << 0.686 << 1.048 << 0.4124 << 58.99;
  QTest::newRow("45 check") << 45.0 << 1.0 << -1.0 << 0.4894 << 0.6823 << -0.243 << 0.489 << -0.501 << 0.418 << 49.5;
  QTest::newRow("60 roll") << 60.0 << 1.0 << 0.0 << 0.7141 << 0.4817 << -0.165 << 0.714 << 0.348 << 0.2969 << 67.42;
}

void CushionImpactTest::theIntegratedModelMatchesItsOwnTable() {
  QFETCH(double, angle);
  QFETCH(double, roll);
  QFETCH(double, side);
  QFETCH(double, along);
  QFETCH(double, normal);
  QFETCH(double, spinX);
  QFETCH(double, spinY);
  QFETCH(double, spinZ);
  QFETCH(double, rollsNormal);
  QFETCH(double, rollsAngle);
  const PhysicsParameters p = snooker();
  BallState s = toward(angle, 1.0, roll, side, p);
  meetCushionByIntegration(s, nose(0.4, p), p);
  compareOut(s, along, normal, 1.1e-4);
  const Vector3 spin = p.ballRadius_m * s.spin;
  COMPARE_WITHIN(spin.x, spinX, 6e-4);
  COMPARE_WITHIN(spin.y, spinY, 6e-4);
  COMPARE_WITHIN(spin.z, spinZ, 6e-4);
  const Vector3 rolling = motionAfter(freeMotion(s, 0.0, p), p).velocity;
  COMPARE_WITHIN(-rolling.y, rollsNormal, 3e-4);
  COMPARE_WITHIN(std::atan2(rolling.x, -rolling.y) / kDegree, rollsAngle, 4e-2);
}

/// e = 0.85, μw = 0.14, μs = 0.2, sin Θ = 0.27: 0.7717, 0.8458 (0.5397 once it rolls again), 45° (0.5549, 0.5966).
void CushionImpactTest::theIntegratedModelMatchesThePoolNumbers() {
  const PhysicsParameters p = pool(0.85, 0.14);
  BallState stun = toward(0.0, 1.0, 0.0, 0.0, p);
  meetCushionByIntegration(stun, nose(0.27, p), p);
  compareOut(stun, 0.0, 0.7717, 1.1e-4);
  BallState roll = toward(0.0, 1.0, 1.0, 0.0, p);
  meetCushionByIntegration(roll, nose(0.27, p), p);
  compareOut(roll, 0.0, 0.8458, 1.1e-4);
  COMPARE_WITHIN(-motionAfter(freeMotion(roll, 0.0, p), p).velocity.y, 0.5397, 1.1e-4);
  BallState angled = toward(45.0, 1.0, 1.0, 0.0, p);
  meetCushionByIntegration(angled, nose(0.27, p), p);
  compareOut(angled, 0.5549, 0.5966, 1.1e-4);
  const Vector3 rolling = motionAfter(freeMotion(angled, 0.0, p), p).velocity;
  COMPARE_WITHIN(std::atan2(rolling.x, -rolling.y) / kDegree, 58.88, 0.02);
}

/// Boost.Odeint integrates the rigid ball's equations over the normal impulse, in vectors and with a slip direction
/// that is smoothed below 10 µm/s; written apart from the model.
void CushionImpactTest::theIntegratedModelAgreesWithAnIndependentIntegrator() {
  using namespace boost::numeric::odeint;
  using Values = std::array<double, 7>;  // v, ω, work done against the cushion; per mass
  const PhysicsParameters p = pool(0.85, 0.14);
  const CushionContact contact = nose(0.27, p);
  const Vector3 n = contact.toward;
  const double radius = p.ballRadius_m;
  const double inertia = 0.4 * radius * radius;
  const auto equations = [&](const Values& s, Values& change, double) {
    const Vector3 v{s[0], s[1], s[2]};
    const Vector3 w{s[3], s[4], s[5]};
    const auto smooth = [](Vector3 slip) { return slip / std::sqrt(dot(slip, slip) + 1e-10); };
    const Vector3 surface = v + cross(w, radius * n);
    const Vector3 force = -n - p.cushionFriction * smooth(surface - dot(surface, n) * n);
    const double table = std::max(0.0, -force.z);
    const Vector3 bottom{0.0, 0.0, -radius};
    const Vector3 drag = -(p.slidingFriction * table) * smooth(horizontal(planOf(v + cross(w, bottom))));
    const Vector3 dv = force + drag;
    const Vector3 dw = (cross(radius * n, force) + cross(bottom, drag)) / inertia;
    change = {dv.x, dv.y, 0.0, dw.x, dw.y, dw.z, dot(v, n)};
  };
  for (const auto& [angle, roll, side] : {std::tuple{0.0, 1.0, 0.0},
                                          {0.0, 0.0, 0.0},
                                          {45.0, 1.0, 0.0},
                                          {45.0, 1.0, 1.0},
                                          {30.0, 0.0, -0.5},
                                          {60.0, -1.0, 0.3}}) {
    BallState ours = toward(angle, 1.0, roll, side, p);
    Values s{ours.velocity.x, ours.velocity.y, 0.0, ours.spin.x, ours.spin.y, ours.spin.z, 0.0};
    meetCushionByIntegration(ours, contact, p);
    runge_kutta4<Values> stepper;
    const double step = 1e-5;
    while (s[1] > 0.0)
      stepper.do_step(equations, s, 0.0, step);
    const double stored = s[6];
    Values last = s;
    while (s[6] > (1.0 - 0.85 * 0.85) * stored) {
      last = s;
      stepper.do_step(equations, s, 0.0, step);
    }
    const double share = (last[6] - (1.0 - 0.85 * 0.85) * stored) / (last[6] - s[6]);
    for (std::size_t i = 0; i < 6; ++i)
      s[i] = last[i] + share * (s[i] - last[i]);
    const double scale = std::hypot(s[0], s[1]);
    COMPARE_WITHIN(ours.velocity.x, s[0], 1e-4 * scale);
    COMPARE_WITHIN(ours.velocity.y, s[1], 1e-4 * scale);
    COMPARE_WITHIN(radius * ours.spin.x, radius * s[3], 1e-4 * scale);
    COMPARE_WITHIN(radius * ours.spin.y, radius * s[4], 1e-4 * scale);
    COMPARE_WITHIN(radius * ours.spin.z, radius * s[5], 1e-4 * scale);
  }
}

/// Han (2005, structure from memory): e = 0.85, μ = 0.2, sin Θ = 0.27; numbers from the impulse equations.
void CushionImpactTest::theImpulseModelMatchesItsOwnNumbers_data() {
  QTest::addColumn<double>("angle");
  QTest::addColumn<double>("roll");
  QTest::addColumn<double>("side");
  QTest::addColumn<double>("along");
  QTest::addColumn<double>("normal");
  QTest::newRow("square stun") << 0.0 << 0.0 << 0.0 << 0.0 << 0.7360;
  QTest::newRow("square roll") << 0.0 << 1.0 << 0.0 << 0.0 << 0.8113;
  QTest::newRow("45 stun") << 45.0 << 0.0 << 0.0 << 0.5051 << 0.5204;
  QTest::newRow("45 roll") << 45.0 << 1.0 << 0.0 << 0.5290 << 0.5538;
  QTest::newRow("45 running") << 45.0 << 1.0 << 1.0 << 0.7252 << 0.5735;
  QTest::newRow("45 check") << 45.0 << 1.0 << -1.0 << 0.4802 << 0.5352;
}

void CushionImpactTest::theImpulseModelMatchesItsOwnNumbers() {
  QFETCH(double, angle);
  QFETCH(double, roll);
  QFETCH(double, side);
  QFETCH(double, along);
  QFETCH(double, normal);
  const PhysicsParameters p = pool(0.85, 0.2);
  BallState s = toward(angle, 1.0, roll, side, p);
  meetCushionByImpulse(s, nose(0.27, p), p);
  compareOut(s, along, normal, 6e-5);
  if (angle == 0.0) COMPARE_WITHIN(p.ballRadius_m * s.spin.x, roll == 0.0 ? 0.1929 : -0.1094, 6e-5);
}

/// sin Θ = 0: normal speed −e vy, and a sticking ball keeps 5/7 of its speed along the rail (closed form, compare
/// Garwin 1969 for the sticking rebound).
void CushionImpactTest::aNoseAtCentreHeightGivesTheTextbookRebound() {
  const PhysicsParameters p = pool(0.85, 2.0);
  BallState stun = toward(45.0, 1.0, 0.0, 0.0, p);
  meetCushionByImpulse(stun, nose(0.0, p), p);
  compareOut(stun, 0.50508, 0.60104, 6e-6);
  COMPARE_WITHIN(p.ballRadius_m * stun.spin.z, 0.50508, 6e-6);
  BallState geared = toward(45.0, 1.0, 0.0, std::sin(45.0 * kDegree), p);
  meetCushionByImpulse(geared, nose(0.0, p), p);
  COMPARE_WITHIN(geared.velocity.x, std::sin(45.0 * kDegree), 1e-12);
}

void CushionImpactTest::energyNeverRisesAndNoBallComesBackFaster() {
  const PhysicsParameters p = pool(0.95, 0.25);
  for (int model = 0; model < 2; ++model) {
    for (double angle = 0.0; angle < 88.0; angle += 11.0) {
      for (double roll = -5.0; roll <= 5.0; roll += 1.25) {
        for (double side = -2.0; side <= 2.0; side += 1.0) {
          BallState s = toward(angle, 1.3, roll, side, p);
          const BallState in = s;
          if (model == 0) {
            meetCushionByImpulse(s, nose(0.27, p), p);
          } else {
            meetCushionByIntegration(s, nose(0.27, p), p, 2000);
          }
          QVERIFY(energy_J(s, p) <= energy_J(in, p) * (1.0 + 1e-12));
          QVERIFY(-s.velocity.y <= in.velocity.y * (1.0 + 1e-12));
          QVERIFY(s.velocity.y <= 0.08 * in.velocity.y);
        }
      }
    }
  }
}

void CushionImpactTest::doubleSpeedDoublesEverything() {
  const PhysicsParameters p = snooker();
  BallState one = toward(30.0, 1.0, 1.0, 0.4, p);
  BallState two = toward(30.0, 2.0, 1.0, 0.8, p);
  meetCushionByIntegration(one, nose(0.4, p), p);
  meetCushionByIntegration(two, nose(0.4, p), p);
  COMPARE_WITHIN(length(two.velocity - 2.0 * one.velocity), 0.0, 1e-12);
  COMPARE_WITHIN(length(two.spin - 2.0 * one.spin), 0.0, 1e-10);
}

void CushionImpactTest::mirroredInputGivesMirroredOutput() {
  const PhysicsParameters p = pool(0.85, 0.2);
  const auto mirrored = [](BallState s) {
    s.velocity.x = -s.velocity.x;
    s.spin.y = -s.spin.y;
    s.spin.z = -s.spin.z;
    return s;
  };
  for (const CushionModel model : {CushionModel::Impulse, CushionModel::Integrated}) {
    PhysicsParameters q = p;
    q.cushionModel = model;
    BallState s = toward(40.0, 1.7, 0.6, -0.9, p);
    BallState m = mirrored(s);
    meetCushion(s, nose(0.27, p), q);
    meetCushion(m, nose(0.27, p), q);
    QCOMPARE(m, mirrored(s));
  }
}

/// Alciatore, cushion nose height and banks (physics resource pages): a rolling ball banks longer than it came once it
/// rolls again, running side lengthens, check side shortens. The last is looked at in the rebound itself: how far the
/// spin that is left bends the ball afterwards depends on the cloth.
void CushionImpactTest::runningSideLengthensAndCheckSideShortens() {
  const auto rebound = [](CushionModel model, double side, bool rollsAgain) {
    PhysicsParameters p = model == CushionModel::Impulse ? pool(0.85, 0.2) : pool(0.85, 0.14);
    p.cushionModel = model;
    BallState s = toward(45.0, 1.0, 1.0, side, p);
    meetCushion(s, nose(0.27, p), p);
    const Vector3 v = rollsAgain ? motionAfter(freeMotion(s, 0.0, p), p).velocity : s.velocity;
    return std::atan2(v.x, -v.y) / kDegree;
  };
  for (const CushionModel model : {CushionModel::Impulse, CushionModel::Integrated}) {
    QVERIFY(rebound(model, 0.0, true) > 45.0);
    QVERIFY(rebound(model, 1.0, true) > rebound(model, 0.0, true));
    QVERIFY(rebound(model, 1.0, false) > rebound(model, 0.0, false));
    QVERIFY(rebound(model, -1.0, false) < rebound(model, 0.0, false));
  }
}

/// Alciatore, cushion nose height (physics resource pages).
void CushionImpactTest::aHigherNoseIsSlower() {
  const PhysicsParameters p = pool(0.85, 0.2);
  double last = 1.0;
  for (const double sine : {0.1, 0.2, 0.3, 0.4}) {
    BallState s = toward(0.0, 1.0, 1.0, 0.0, p);
    meetCushion(s, nose(sine, p), p);
    QVERIFY(-s.velocity.y < last);
    last = -s.velocity.y;
  }
}

FERRULE_TEST(CushionImpactTest)
#include "cushion_impact_test.moc"
