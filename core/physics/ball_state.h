// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/physics_parameters.h"
#include "core/physics/vector3.h"
#include "core/table/ball.h"

namespace ferrule {

/// One ball at one instant.
struct BallState {
  BallName ball;
  TablePoint3 position;  ///< of its centre, m; z = R on the cloth
  Vector3 velocity;      ///< m/s
  Vector3 spin;          ///< rad/s

  bool operator==(const BallState&) const = default;
};

/// A resting ball on the cloth.
[[nodiscard]] inline BallState ballAtRest(BallName ball, TablePoint place, const PhysicsParameters& p) {
  return {ball, {place.x, place.y, p.ballRadius_m}, {}, {}};
}

/// How fast the ball's lowest point slides over the cloth, m/s, horizontal: v + ω × (−R k) = v − R (ω × k).
[[nodiscard]] inline Vector3 clothSlip(Vector3 velocity, Vector3 spin, double radius_m) {
  return {velocity.x - radius_m * spin.y, velocity.y + radius_m * spin.x, 0.0};
}

/// The spin of a ball that rolls with this velocity, with the upright part given: ω = (k × v) / R.
[[nodiscard]] inline Vector3 rollingSpin(Vector3 velocity, double upright_radps, double radius_m) {
  return {-velocity.y / radius_m, velocity.x / radius_m, upright_radps};
}

/// Moving, spinning and height energy above the cloth, J.
[[nodiscard]] inline double energy_J(const BallState& s, const PhysicsParameters& p) {
  return 0.5 * p.ballMass_kg * dot(s.velocity, s.velocity) + 0.5 * inertia_kgm2(p) * dot(s.spin, s.spin) +
         p.ballMass_kg * p.gravity_mps2 * (s.position.z - p.ballRadius_m);
}

}  // namespace ferrule
