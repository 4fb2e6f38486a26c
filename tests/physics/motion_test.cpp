// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/motion.h"

#include <QtTest>
#include <boost/numeric/odeint.hpp>

#include "core/geometry/units.h"
#include "tests/physics/physics_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

class MotionTest : public QObject {
  Q_OBJECT
 private slots:
  void aStraightSlideTurnsToRollingAtTheClosedForm_data();
  void aStraightSlideTurnsToRollingAtTheClosedForm();
  void backspinIsUsedUpAtTheStunPoint();
  void aSideslippingBallFollowsTheParabola();
  void sidespinAloneLeavesTheWayOfASlidingBallUnchanged();
  void theRollingSpeedDoesNotDependOnFriction();
  void aCueBallBendsAfterACollisionAsPublished();
  void aRollingBallStopsAtTheClosedFormDistance_data();
  void aRollingBallStopsAtTheClosedFormDistance();
  void aRollOverTableLengthsIsTimedAsPublished();
  void aBallHitAtItsCentreTravelsThePublishedWay();
  void uprightSpinAloneMovesNothingAndDies();
  void theDecayOfSpinIsAFrictionCoefficientToo();
  void aSpinningBallKeepsItsSidespinLongerThanItsRoll();
  void stunToRollKeepsFiveSeventhsOfTheEnergy();
  void slidingLosesEnergyAtTheRateOfFriction();
  void rollingKeepsItsSpinTiedToItsSpeed();
  void aLaunchedBallFliesThePublishedArc_data();
  void aLaunchedBallFliesThePublishedArc();
  void bouncesDieAndTheBallComesToRest();
  void pathsAgreeWithAnIndependentIntegrator();
};

namespace {

const PhysicsParameters kP = referenceParameters();

/// Motions until rest, in order.
std::vector<Motion> wayOf(const BallState& start, const PhysicsParameters& p) {
  std::vector<Motion> way{freeMotion(start, 0.0, p)};
  while (way.back().kind != MotionKind::Resting && way.size() < 100)
    way.push_back(motionAfter(way.back(), p));
  return way;
}

const Motion& at(const std::vector<Motion>& way, double time_s) {
  for (const Motion& m : way) {
    if (time_s <= m.end_s) return m;
  }
  return way.back();
}

}  // namespace

/// Marlow (1995), sliding ball: T = 2|u0|/(7 μs g), v_f = (5 v0 + 2 S)/7, d = v0 T − ½ sign(u0) μs g T²; numbers from
/// the same formulas.
void MotionTest::aStraightSlideTurnsToRollingAtTheClosedForm_data() {
  QTest::addColumn<double>("speed");
  QTest::addColumn<double>("spinSpeed");
  QTest::addColumn<double>("time");
  QTest::addColumn<double>("rolling");
  QTest::addColumn<double>("distance");
  QTest::newRow("stun 2") << 2.0 << 0.0 << 0.29125 << 1.4286 << 0.49928;
  QTest::newRow("stun 3") << 3.0 << 0.0 << 0.43687 << 2.1429 << 1.1234;
  QTest::newRow("backspin at the rate of roll") << 2.0 << -2.0 << 0.58250 << 0.85714 << 0.83214;
  QTest::newRow("most draw") << 2.0 << -2.5 << 0.65531 << 0.71429 << 0.88935;
  QTest::newRow("most follow") << 2.0 << 2.5 << 0.072812 << 2.1429 << 0.15082;
  QTest::newRow("stopped with backspin") << 0.0 << -2.0 << 0.29125 << -0.57143 << -0.083214;
  QTest::newRow("stopped with topspin") << 0.0 << 2.0 << 0.29125 << 0.57143 << 0.083214;
  QTest::newRow("turns back") << 1.0 << -3.0 << 0.58250 << -0.14286 << 0.24964;
}

void MotionTest::aStraightSlideTurnsToRollingAtTheClosedForm() {
  QFETCH(double, speed);
  QFETCH(double, spinSpeed);
  QFETCH(double, time);
  QFETCH(double, rolling);
  QFETCH(double, distance);
  const Motion slide = freeMotion(moving({speed, 0.0, 0.0}, {0.0, spinSpeed, 0.0}, kP), 0.0, kP);
  QCOMPARE(slide.kind, MotionKind::Sliding);
  COMPARE_WITHIN(slide.end_s, time, 6e-6);
  const Motion roll = motionAfter(slide, kP);
  QCOMPARE(roll.kind, MotionKind::Rolling);
  COMPARE_WITHIN(roll.velocity.x, rolling, 6e-5);
  COMPARE_WITHIN(roll.position.x, distance, 6e-5);
}

/// Stun point t = 2|S|/(5 μs g): 0.50968 s, 1.0000 m/s, 0.76453 m for v0 = 2, S = −2.5 (from the closed form).
void MotionTest::backspinIsUsedUpAtTheStunPoint() {
  const Motion slide = freeMotion(moving({2.0, 0.0, 0.0}, {0.0, -2.5, 0.0}, kP), 0.0, kP);
  const double stun_s = 2.0 * 2.5 / (5.0 * 0.2 * 9.81);
  COMPARE_WITHIN(stun_s, 0.50968, 5e-6);
  COMPARE_WITHIN(slide.spinAt(stun_s).y, 0.0, 1e-12);
  COMPARE_WITHIN(slide.velocityAt(stun_s).x, 1.0, 1e-12);
  COMPARE_WITHIN(slide.positionAt(stun_s).x, 0.76453, 5e-6);
}

/// The two-dimensional case, confirmed by a microsecond integration when the reference values were made.
void MotionTest::aSideslippingBallFollowsTheParabola() {
  const Motion slide = freeMotion(moving({2.0, 0.0, 0.0}, {1.0, -1.5, 0.7}, kP), 0.0, kP);
  COMPARE_WITHIN(slide.end_s, 0.53008, 5e-6);
  const TablePoint3 quarter = slide.positionAt(0.25);
  COMPARE_WITHIN(quarter.x, 0.44105, 5e-6);
  COMPARE_WITHIN(quarter.y, -0.016844, 5e-7);
  const Motion roll = motionAfter(slide, kP);
  COMPARE_WITHIN(roll.position.x, 0.79512, 5e-6);
  COMPARE_WITHIN(roll.position.y, -0.075726, 5e-7);
  COMPARE_WITHIN(roll.velocity.x, 1.0, 1e-12);
  COMPARE_WITHIN(roll.velocity.y, -0.28571, 5e-6);
  COMPARE_WITHIN(degreesFromRadians(std::atan2(roll.velocity.y, roll.velocity.x)), -15.945, 5e-4);
}

void MotionTest::sidespinAloneLeavesTheWayOfASlidingBallUnchanged() {
  const Motion plain = freeMotion(moving({2.0, 0.0, 0.0}, {1.0, -1.5, 0.0}, kP), 0.0, kP);
  const Motion sided = freeMotion(moving({2.0, 0.0, 0.0}, {1.0, -1.5, 3.0}, kP), 0.0, kP);
  QCOMPARE(sided.positionAt(0.4), plain.positionAt(0.4));
  QCOMPARE(sided.end_s, plain.end_s);
}

/// v_f = (5/7) v0 + (2/7) R (ω0 × k): no friction in it.
void MotionTest::theRollingSpeedDoesNotDependOnFriction() {
  for (const double friction : {0.1, 0.2, 0.35}) {
    PhysicsParameters p = kP;
    p.slidingFriction = friction;
    const Motion roll = motionAfter(freeMotion(moving({1.7, 0.4, 0.0}, {-0.6, 0.9, 0.0}, p), 0.0, p), p);
    COMPARE_WITHIN(roll.velocity.x, (5.0 * 1.7 + 2.0 * 0.9) / 7.0, 1e-12);
    COMPARE_WITHIN(roll.velocity.y, (5.0 * 0.4 + 2.0 * 0.6) / 7.0, 1e-12);
  }
}

/// Alciatore, technical proof A.20 (2005): rolling cue ball, elastic hit without friction; numbers from its formulas.
void MotionTest::aCueBallBendsAfterACollisionAsPublished() {
  struct Row {
    double cut_deg, time, x, y, vx, vy;
  };
  for (const Row& row : {Row{30.0, 0.25223, 0.18016, 0.18723, 0.92857, 0.61859},
                         Row{45.0, 0.20594, 0.23536, 0.17652, 1.28571, 0.71429}}) {
    const double cut = radiansFromDegrees(row.cut_deg);
    const double speed = 2.0 * std::sin(cut);
    const BallState after = moving({speed * std::sin(cut), speed * std::cos(cut), 0.0}, {0.0, 2.0, 0.0}, kP);
    const Motion slide = freeMotion(after, 0.0, kP);
    const Motion roll = motionAfter(slide, kP);
    COMPARE_WITHIN(slide.end_s, row.time, 5e-6);
    COMPARE_WITHIN(roll.position.x, row.x, 5e-6);
    COMPARE_WITHIN(roll.position.y, row.y, 5e-6);
    COMPARE_WITHIN(roll.velocity.x, row.vx, 5e-6);
    COMPARE_WITHIN(roll.velocity.y, row.vy, 5e-6);
  }
}

/// v²/(2 μr g) and v/(μr g).
void MotionTest::aRollingBallStopsAtTheClosedFormDistance_data() {
  QTest::addColumn<double>("friction");
  QTest::addColumn<double>("speed");
  QTest::addColumn<double>("distance");
  QTest::addColumn<double>("time");
  QTest::newRow("0.5 m/s, 0.005") << 0.005 << 0.5 << 2.5484 << 10.194;
  QTest::newRow("1.0 m/s, 0.005") << 0.005 << 1.0 << 10.194 << 20.387;
  QTest::newRow("2.0 m/s, 0.005") << 0.005 << 2.0 << 40.775 << 40.775;
  QTest::newRow("3.0 m/s, 0.005") << 0.005 << 3.0 << 91.743 << 61.162;
  QTest::newRow("0.5 m/s, 0.01") << 0.01 << 0.5 << 1.2742 << 5.0968;
  QTest::newRow("1.0 m/s, 0.01") << 0.01 << 1.0 << 5.0968 << 10.194;
  QTest::newRow("2.0 m/s, 0.01") << 0.01 << 2.0 << 20.387 << 20.387;
  QTest::newRow("3.0 m/s, 0.01") << 0.01 << 3.0 << 45.872 << 30.581;
  QTest::newRow("0.5 m/s, 0.015") << 0.015 << 0.5 << 0.84947 << 3.3979;
  QTest::newRow("1.0 m/s, 0.015") << 0.015 << 1.0 << 3.3979 << 6.7958;
  QTest::newRow("2.0 m/s, 0.015") << 0.015 << 2.0 << 13.592 << 13.592;
  QTest::newRow("3.0 m/s, 0.015") << 0.015 << 3.0 << 30.581 << 20.387;
}

void MotionTest::aRollingBallStopsAtTheClosedFormDistance() {
  QFETCH(double, friction);
  QFETCH(double, speed);
  QFETCH(double, distance);
  QFETCH(double, time);
  PhysicsParameters p = kP;
  p.rollingFriction = friction;
  const Motion roll = freeMotion(moving({speed, 0.0, 0.0}, {0.0, speed, 0.0}, p), 0.0, p);
  QCOMPARE(roll.kind, MotionKind::Rolling);
  COMPARE_WITHIN(roll.end_s, time, 6e-4);
  const Motion rest = motionAfter(roll, p);
  QCOMPARE(rest.kind, MotionKind::Resting);
  COMPARE_WITHIN(rest.position.x, distance, 6e-4);
}

/// √(2 μr g d): one and two lengths of a nine-foot table, 2.54 and 5.08 m, take 0.70594 and 0.99835 m/s; the first two
/// metres from 1 m/s last 2.2478 s (from the closed forms).
void MotionTest::aRollOverTableLengthsIsTimedAsPublished() {
  for (const auto& [speed, distance] : {std::pair{0.70594, 2.54}, {0.99835, 5.08}}) {
    const Motion roll = freeMotion(moving({speed, 0.0, 0.0}, {0.0, speed, 0.0}, kP), 0.0, kP);
    COMPARE_WITHIN(motionAfter(roll, kP).position.x, distance, 1e-4);
  }
  const Motion roll = freeMotion(moving({1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}, kP), 0.0, kP);
  COMPARE_WITHIN(roll.positionAt(2.2478).x, 2.0, 5e-5);
}

/// Slide and roll in all, without cushions: 2.7252 m in 7.4268 s from 1 m/s; 10.901 m in 14.854 s from 2; 24.527 m in
/// 22.280 s from 3 (from the closed forms).
void MotionTest::aBallHitAtItsCentreTravelsThePublishedWay() {
  struct Row {
    double speed, distance, time;
  };
  for (const Row& row : {Row{1.0, 2.7252, 7.4268}, Row{2.0, 10.901, 14.854}, Row{3.0, 24.527, 22.280}}) {
    const auto way = wayOf(moving({row.speed, 0.0, 0.0}, {}, kP), kP);
    COMPARE_WITHIN(way.back().position.x, row.distance, 6e-4);
    COMPARE_WITHIN(way.back().start_s, row.time, 6e-4);
  }
}

void MotionTest::uprightSpinAloneMovesNothingAndDies() {
  const BallState start{kCueBall, {0.3, -0.2, kP.ballRadius_m}, {}, {0.0, 0.0, -42.0}};
  const auto way = wayOf(start, kP);
  QCOMPARE(way.size(), std::size_t{2});
  QCOMPARE(way.front().kind, MotionKind::Spinning);
  COMPARE_WITHIN(way.back().start_s, 42.0 / kP.spinDecay_radps2, 1e-12);
  QCOMPARE(way.back().position, start.position);
}

/// decay = (5/2) μsp g/R: 10 rad/s² is 0.011651; a quoted 0.044 would be 37.764 rad/s² (conversion; 0.044 from memory
/// of Leckie and Greenspan 2006).
void MotionTest::theDecayOfSpinIsAFrictionCoefficientToo() {
  PhysicsParameters p = kP;
  p.spinDecay_radps2 = 10.0;
  COMPARE_WITHIN(spinFrictionFrom(p), 0.011651, 6e-7);
  p.spinDecay_radps2 = 37.764;
  COMPARE_WITHIN(spinFrictionFrom(p), 0.044, 1e-6);
}

void MotionTest::aSpinningBallKeepsItsSidespinLongerThanItsRoll() {
  const auto way = wayOf(moving({0.05, 0.0, 0.0}, {0.0, 0.05, 2.0}, kP), kP);
  QCOMPARE(way.size(), std::size_t{3});
  QCOMPARE(way[1].kind, MotionKind::Spinning);
  COMPARE_WITHIN(way[2].start_s, 2.0 / kP.ballRadius_m / kP.spinDecay_radps2, 1e-12);
}

void MotionTest::stunToRollKeepsFiveSeventhsOfTheEnergy() {
  const BallState start = moving({1.3, -0.4, 0.0}, {}, kP);
  const Motion roll = motionAfter(freeMotion(start, 0.0, kP), kP);
  COMPARE_WITHIN(energy_J(stateAt(roll, kCueBall, roll.start_s), kP) / energy_J(start, kP), 5.0 / 7.0, 1e-12);
}

/// The rate is μs m g |u|.
void MotionTest::slidingLosesEnergyAtTheRateOfFriction() {
  const Motion slide = freeMotion(moving({2.0, 0.5, 0.0}, {1.0, -1.5, 0.0}, kP), 0.0, kP);
  const double t = 0.2;
  const double h = 1e-4;
  const auto energyAt = [&](double time_s) { return energy_J(stateAt(slide, kCueBall, time_s), kP); };
  const double slip = length(clothSlip(slide.velocityAt(t), slide.spinAt(t), kP.ballRadius_m));
  COMPARE_WITHIN((energyAt(t + h) - energyAt(t - h)) / (2.0 * h), -0.2 * 0.170 * 9.81 * slip, 1e-8);
}

void MotionTest::rollingKeepsItsSpinTiedToItsSpeed() {
  const Motion roll = freeMotion(moving({0.8, -0.6, 0.0}, {0.6, 0.8, 0.2}, kP), 0.0, kP);
  QCOMPARE(roll.kind, MotionKind::Rolling);
  for (const double t : {0.0, 1.0, 5.0, 10.0}) {
    COMPARE_WITHIN(length(clothSlip(roll.velocityAt(t), roll.spinAt(t), kP.ballRadius_m)), 0.0, 1e-12);
    COMPARE_WITHIN(cross(roll.velocityAt(t), Vector3{0.8, -0.6, 0.0}).z, 0.0, 1e-12);
  }
}

/// vz = e_s v sin θ, apex vz²/2g, range 2 vx vz/g (from the formulas; slate values from memory of Alciatore's
/// analyses).
void MotionTest::aLaunchedBallFliesThePublishedArc_data() {
  QTest::addColumn<double>("elevation");
  QTest::addColumn<double>("speed");
  QTest::addColumn<double>("slate");
  QTest::addColumn<double>("apex");
  QTest::addColumn<double>("flight");
  QTest::addColumn<double>("range");
  QTest::newRow("40 degrees") << 40.0 << 5.0 << 0.5 << 0.13162 << 0.32762 << 1.2549;
  QTest::newRow("45 degrees") << 45.0 << 4.0 << 0.55 << 0.12334 << 0.31715 << 0.89704;
  QTest::newRow("a level power shot") << 5.0 << 5.0 << 0.5 << 0.00242 << 0.04442 << 0.22126;
}

void MotionTest::aLaunchedBallFliesThePublishedArc() {
  QFETCH(double, elevation);
  QFETCH(double, speed);
  QFETCH(double, slate);
  QFETCH(double, apex);
  QFETCH(double, flight);
  QFETCH(double, range);
  const double angle = radiansFromDegrees(elevation);
  const BallState start = moving({speed * std::cos(angle), 0.0, slate * speed * std::sin(angle)}, {0.0, 1.0, 2.0}, kP);
  const Motion arc = freeMotion(start, 0.0, kP);
  QCOMPARE(arc.kind, MotionKind::Airborne);
  COMPARE_WITHIN(arc.end_s, flight, 6e-6);
  COMPARE_WITHIN(arc.positionAt(arc.end_s).x, range, 6e-5);
  COMPARE_WITHIN(arc.positionAt(0.5 * arc.end_s).z - kP.ballRadius_m, apex, 6e-6);
  QCOMPARE(arc.spinAt(arc.end_s), start.spin);
}

void MotionTest::bouncesDieAndTheBallComesToRest() {
  const auto way = wayOf(moving({2.0, 0.3, 1.5}, {-1.0, -3.0, 1.0}, kP), kP);
  QCOMPARE(way.back().kind, MotionKind::Resting);
  double last = energy_J(stateAt(way.front(), kCueBall, 0.0), kP);
  for (const Motion& m : way) {
    const double here = energy_J(stateAt(m, kCueBall, m.start_s), kP);
    QVERIFY(here <= last * (1.0 + 1e-12));
    last = here;
  }
}

/// Boost.Odeint integrates the rigid ball's equations: forces and torques at the contact with the cloth, nothing solved
/// beforehand. Friction of a ball that grips is the limit of the same law, so the direction of the slip is smoothed
/// below 10 nm/s.
void MotionTest::pathsAgreeWithAnIndependentIntegrator() {
  using Values = std::array<double, 7>;  // x, y, vx, vy, ωx, ωy, ωz
  const auto equations = [](const Values& s, Values& change, double) {
    const double slipX = s[2] - kP.ballRadius_m * s[5];
    const double slipY = s[3] + kP.ballRadius_m * s[4];
    const double slip = std::sqrt(slipX * slipX + slipY * slipY + 1e-16);
    const double grip = kP.slidingFriction * kP.ballMass_kg * kP.gravity_mps2;
    const double forceX = -grip * slipX / slip;
    const double forceY = -grip * slipY / slip;
    change = {};
    change[0] = s[2];
    change[1] = s[3];
    change[2] = forceX / kP.ballMass_kg;
    change[3] = forceY / kP.ballMass_kg;
    // torque = (−R k) × F
    change[4] = kP.ballRadius_m * forceY / inertia_kgm2(kP);
    change[5] = -kP.ballRadius_m * forceX / inertia_kgm2(kP);
    change[6] = s[6] > 0.0 ? -kP.spinDecay_radps2 : 0.0;
  };
  const auto rolling = [](const Values& s, Values& change, double) {
    const double speed = std::hypot(s[2], s[3]);
    change = {};
    change[0] = s[2];
    change[1] = s[3];
    change[2] = -kP.rollingFriction * kP.gravity_mps2 * s[2] / speed;
    change[3] = -kP.rollingFriction * kP.gravity_mps2 * s[3] / speed;
  };
  using namespace boost::numeric::odeint;
  for (const auto& [velocity, spinSpeed] : {std::pair{Vector3{2.0, 0.0, 0.0}, Vector3{1.0, -1.5, 0.7}},
                                            std::pair{Vector3{3.5, 1.0, 0.0}, Vector3{2.0, -4.0, 1.0}},
                                            std::pair{Vector3{0.6, -0.9, 0.0}, Vector3{-1.0, 1.2, 0.1}}}) {
    const BallState start = moving(velocity, spinSpeed, kP);
    const auto way = wayOf(start, kP);
    Values s{0.0, 0.0, velocity.x, velocity.y, start.spin.x, start.spin.y, start.spin.z};
    auto stepper = make_controlled(1e-11, 1e-11, runge_kutta_dopri5<Values>());
    // The integrator finds the end of the slide by itself: where the slip is gone.
    double t = 0.0;
    const double step = 1e-3;
    const auto slipOf = [&](const Values& v) {
      return std::hypot(v[2] - kP.ballRadius_m * v[5], v[3] + kP.ballRadius_m * v[4]);
    };
    while (slipOf(s) > 3.5 * 0.2 * 9.81 * step) {
      integrate_adaptive(stepper, equations, s, t, t + step, 1e-4);
      t += step;
      const TablePoint3 ours = at(way, t).positionAt(t);
      COMPARE_WITHIN(std::hypot(ours.x - s[0], ours.y - s[1]), 0.0, 1e-6);
    }
    // In a microsecond friction takes 7 µm/s of slip away.
    for (const double fine : {1e-6, 1e-7}) {
      for (int i = 0; i < 10000 && slipOf(s) > 10.0 * fine; ++i) {
        integrate_const(runge_kutta4<Values>(), equations, s, t, t + fine, fine);
        t += fine;
      }
      QVERIFY(slipOf(s) <= 10.0 * fine);
    }
    while (t < 3.0) {
      integrate_adaptive(stepper, rolling, s, t, t + 0.01, 1e-3);
      t += 0.01;
      const TablePoint3 ours = at(way, t).positionAt(t);
      COMPARE_WITHIN(std::hypot(ours.x - s[0], ours.y - s[1]), 0.0, 1e-6);
    }
  }
}

FERRULE_TEST(MotionTest)
#include "motion_test.moc"
