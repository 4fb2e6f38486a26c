// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>

#include "core/physics/ball_state.h"

namespace ferrule {

/// How a ball moves between two events.
enum class MotionKind {
  Resting,   ///< nothing moves
  Spinning,  ///< on its spot, about the upright axis
  Rolling,   ///< without slip on the cloth
  Sliding,   ///< its lowest point slips over the cloth
  Airborne,  ///< free flight
  Falling,   ///< its centre is past a pocket's edge, not yet out of reach of the slate
  Gone,      ///< in a pocket, or off the table
};

/// One stretch of a ball's way, in closed form: constant acceleration, constant change of spin.
///
/// Holds where rigid balls, Coulomb friction and a level cloth hold; without the drag of the air, which equals rolling
/// friction only at 4.8 m/s.
struct Motion {
  MotionKind kind = MotionKind::Resting;
  double start_s = 0.0;
  double end_s = std::numeric_limits<double>::infinity();  ///< when it turns into another kind, if nothing is hit
  TablePoint3 position;                                    ///< at start_s
  Vector3 velocity;                                        ///< at start_s
  Vector3 acceleration;
  Vector3 spin;        ///< at start_s
  Vector3 spinChange;  ///< rad/s^2; the upright part stops at 0 and stays there

  [[nodiscard]] TablePoint3 positionAt(double time_s) const {
    const double t = time_s - start_s;
    return position + t * velocity + (0.5 * t * t) * acceleration;
  }
  [[nodiscard]] Vector3 velocityAt(double time_s) const { return velocity + (time_s - start_s) * acceleration; }
  [[nodiscard]] Vector3 spinAt(double time_s) const;
  [[nodiscard]] bool onCloth() const { return kind <= MotionKind::Sliding; }
  /// Whether the centre moves.
  [[nodiscard]] bool moves() const { return kind >= MotionKind::Rolling && kind <= MotionKind::Falling; }

  bool operator==(const Motion&) const = default;
};

/// The free motion that starts in this state.
///
/// On the cloth (z = R, no upward speed) the kind follows from slip and speed; above it the ball flies.
/// Sliding: slip u = v − R (ω × k) keeps its direction and dies at rate (7/2) μs g, so that T = 2 |u| / (7 μs g), the
/// path is a parabola and rolling starts with v = (5/7) v0 + (2/7) R (ω0 × k). Rolling: deceleration μr g along v.
/// Source: Marlow, The Physics of Pocket Billiards (1995); component form in a public derivation of 2006.
[[nodiscard]] Motion freeMotion(const BallState& state, double start_s, const PhysicsParameters& parameters);

/// What follows when a motion reaches its own end: sliding turns to rolling, rolling to spinning or resting, spinning
/// to resting, flight to a landing. Not for Resting, Falling and Gone, which have no successor of their own.
[[nodiscard]] Motion motionAfter(const Motion& motion, const PhysicsParameters& parameters);

/// The ball at a time within the motion.
[[nodiscard]] BallState stateAt(const Motion& motion, BallName ball, double time_s);

}  // namespace ferrule
