// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/motion.h"

#include <cmath>

#include "core/base/contract.h"
#include "core/physics/slate.h"

namespace ferrule {

namespace {

/// Slower than this is still: 1 nm/s would move a ball by less than an atom before anyone could see it.
constexpr double kStill_mps = 1e-9;
constexpr double kStill_radps = 1e-7;
/// A ball this close to the cloth lies on it.
constexpr double kOnCloth_m = 1e-9;

double uprightChange(double upright_radps, const PhysicsParameters& p) {
  return upright_radps > 0.0 ? -p.spinDecay_radps2 : upright_radps < 0.0 ? p.spinDecay_radps2 : 0.0;
}

void makeResting(Motion& m) {
  m.kind = MotionKind::Resting;
  m.velocity = {};
  m.spin = {};
}

void makeSpinning(Motion& m, const PhysicsParameters& p) {
  m.velocity = {};
  m.spin.x = 0.0;
  m.spin.y = 0.0;
  if (std::abs(m.spin.z) <= kStill_radps) return makeResting(m);
  m.kind = MotionKind::Spinning;
  m.spinChange.z = uprightChange(m.spin.z, p);
  m.end_s = m.start_s + std::abs(m.spin.z) / p.spinDecay_radps2;
}

void makeRolling(Motion& m, const PhysicsParameters& p) {
  const double speed_mps = length(m.velocity);
  if (speed_mps <= kStill_mps) return makeSpinning(m, p);
  m.kind = MotionKind::Rolling;
  const double deceleration = p.rollingFriction * p.gravity_mps2;
  m.acceleration = (-deceleration / speed_mps) * m.velocity;
  m.spin = rollingSpin(m.velocity, m.spin.z, p.ballRadius_m);
  m.spinChange = rollingSpin(m.acceleration, uprightChange(m.spin.z, p), p.ballRadius_m);
  m.end_s = m.start_s + speed_mps / deceleration;
}

void makeSliding(Motion& m, Vector3 slip, double slip_mps, const PhysicsParameters& p) {
  m.kind = MotionKind::Sliding;
  const double grip = p.slidingFriction * p.gravity_mps2;
  m.acceleration = (-grip / slip_mps) * slip;
  // ω̇ = (5/(2R)) μs g (k × û)
  const double turn = 2.5 * grip / (p.ballRadius_m * slip_mps);
  m.spinChange = {-turn * slip.y, turn * slip.x, uprightChange(m.spin.z, p)};
  m.end_s = m.start_s + 2.0 * slip_mps / (7.0 * grip);
}

void makeAirborne(Motion& m, const PhysicsParameters& p) {
  m.kind = MotionKind::Airborne;
  const double g = p.gravity_mps2;
  m.acceleration = {0.0, 0.0, -g};
  const double height_m = std::max(0.0, m.position.z - p.ballRadius_m);
  const double vz = m.velocity.z;
  const double root = std::sqrt(vz * vz + 2.0 * g * height_m);
  m.end_s = m.start_s + (vz >= 0.0 ? (vz + root) / g : 2.0 * height_m / (root - vz));
}

}  // namespace

Vector3 Motion::spinAt(double time_s) const {
  const double t = time_s - start_s;
  Vector3 now = spin + t * spinChange;
  if (spin.z * now.z < 0.0) now.z = 0.0;
  return now;
}

Motion freeMotion(const BallState& state, double start_s, const PhysicsParameters& p) {
  Motion m;
  m.start_s = start_s;
  m.position = state.position;
  m.velocity = state.velocity;
  m.spin = state.spin;
  if (state.position.z > p.ballRadius_m + kOnCloth_m || state.velocity.z > 0.0) {
    makeAirborne(m, p);
    return m;
  }
  m.position.z = p.ballRadius_m;
  m.velocity.z = 0.0;
  const Vector3 slip = clothSlip(m.velocity, m.spin, p.ballRadius_m);
  const double slip_mps = length(slip);
  if (slip_mps > kStill_mps) {
    makeSliding(m, slip, slip_mps, p);
  } else {
    makeRolling(m, p);
  }
  return m;
}

Motion motionAfter(const Motion& motion, const PhysicsParameters& p) {
  const double end_s = motion.end_s;
  BallState state = stateAt(motion, {}, end_s);
  Motion m;
  m.start_s = end_s;
  m.position = state.position;
  m.velocity = state.velocity;
  m.spin = state.spin;
  switch (motion.kind) {
    case MotionKind::Sliding:
      makeRolling(m, p);
      return m;
    case MotionKind::Rolling:
      makeSpinning(m, p);
      return m;
    case MotionKind::Spinning:
      makeResting(m);
      return m;
    case MotionKind::Airborne:
      state.position.z = p.ballRadius_m;
      meetSlate(state, p);
      return freeMotion(state, end_s, p);
    default:
      FERRULE_REQUIRE(!"a motion that has a successor");
      return m;
  }
}

BallState stateAt(const Motion& motion, BallName ball, double time_s) {
  return {ball, motion.positionAt(time_s), motion.velocityAt(time_s), motion.spinAt(time_s)};
}

}  // namespace ferrule
