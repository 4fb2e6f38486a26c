// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/physics_parameters.h"

namespace ferrule {

PhysicsParameters parametersFor(const BallSet& balls) {
  PhysicsParameters parameters;
  parameters.ballRadius_m = balls.radius_m();
  parameters.ballMass_kg = balls.mass_kg;
  return parameters;
}

Result<void> check(const PhysicsParameters& p) {
  struct Rule {
    const char* name;
    double value;
    double least;
    double most;
  };
  const Rule rules[] = {
      {"gravity_m_s2", p.gravity_mps2, 0.1, 100.0},
      {"ball_radius_m", p.ballRadius_m, 0.005, 0.1},
      {"ball_mass_kg", p.ballMass_kg, 0.01, 1.0},
      // Without friction a ball would never come to rest, and the shot would never end.
      {"sliding_friction", p.slidingFriction, 0.01, 2.0},
      {"rolling_friction", p.rollingFriction, 0.0005, 0.2},
      {"spin_decay_rad_s2", p.spinDecay_radps2, 0.1, 1000.0},
      {"ball_restitution", p.ballRestitution, 0.0, 1.0},
      {"ball_friction", p.ballFriction.floor, 0.0, 2.0},
      {"ball_friction", p.ballFriction.extra, 0.0, 2.0},
      {"ball_friction", p.ballFriction.rate_spm, 0.0, 1000.0},
      {"cushion_restitution", p.cushionRestitution, 0.0, 1.0},
      {"cushion_friction", p.cushionFriction, 0.0, 2.0},
      {"slate_restitution", p.slateRestitution, 0.0, 0.95},
      {"liner_restitution", p.linerRestitution, 0.0, 0.95},
      {"squirt_mass_ratio", p.squirtMassRatio, 0.0, 1e6},
      {"tip_friction", p.tipFriction, 0.0, 10.0},
      {"cue_mass_kg", p.cueMass_kg, 0.05, 5.0},
      {"tip_restitution", p.tipRestitution, 0.0, 1.0},
  };
  for (const Rule& rule : rules) {
    if (!(rule.value >= rule.least && rule.value <= rule.most)) {
      return failure(ErrorCode::FieldInvalid, "coefficients", rule.name, {rule.value, rule.least, rule.most});
    }
  }
  return {};
}

double spinFrictionFrom(const PhysicsParameters& p) {
  return p.spinDecay_radps2 * 2.0 * p.ballRadius_m / (5.0 * p.gravity_mps2);
}

}  // namespace ferrule
