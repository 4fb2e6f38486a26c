// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

#include "core/base/error.h"
#include "core/table/ball_set.h"

namespace ferrule {

/// Friction between two balls, falling with the speed at which their surfaces slip: floor + extra exp(-rate u).
///
/// Source: Alciatore, technical proof A.28 (2007), a fit to Marlow (1995), table 10: 0.11, 0.06 and 0.01 for a 45
/// degree cut at 0.1, 1 and 10 m/s.
struct BallFriction {
  double floor = 9.951e-3;
  double extra = 0.108;
  double rate_spm = 1.088;  ///< s/m

  /// slip_mps: speed of one surface over the other, >= 0.
  [[nodiscard]] double at(double slip_mps) const { return floor + extra * std::exp(-rate_spm * slip_mps); }
  bool operator==(const BallFriction&) const = default;
};

/// The same friction at every speed.
[[nodiscard]] constexpr BallFriction constantBallFriction(double friction) {
  return {friction, 0.0, 0.0};
}

/// Which law a cushion follows.
enum class CushionModel {
  Impulse,     ///< one impulse in closed form, for search; see cushion_impact.h
  Integrated,  ///< the impulse grown in small steps, for reference; see cushion_impact.h
};

/// What balls, cloth, cushions and cue are made of. One value serves every shot of one table on one day.
struct PhysicsParameters {
  double gravity_mps2 = 9.81;      ///< 9.78 to 9.83 on Earth
  double ballRadius_m = 0.028575;  ///< all balls alike. Source: world equipment specification, balls
  double ballMass_kg = 0.170;      ///< 0.156 to 0.170. Source: world equipment specification, balls

  /// Cloth on a ball that slides, 0.15 to 0.4. Source: Alciatore, physical properties (from memory).
  double slidingFriction = 0.2;
  /// Deceleration of a rolling ball over gravity, 0.005 to 0.015. Source: Alciatore; Marlow (from memory).
  double rollingFriction = 0.01;
  /// How fast a ball's spin about the upright axis dies on the cloth, 5 to 15 rad/s^2. Source: Alciatore (from memory).
  double spinDecay_radps2 = 10.0;

  /// Speed of parting over speed of meeting of two balls, 0.92 to 0.98. Source: Alciatore; Marlow (from memory).
  double ballRestitution = 0.95;
  BallFriction ballFriction;

  /// Of the cushion's contact, along the contact's own normal, 0.6 to 0.98. Source: Alciatore, typical rebound 0.75
  /// (from memory): 0.85 here gives 0.74 for a ball that meets the cushion squarely without spin.
  double cushionRestitution = 0.85;
  /// Cloth of the cushion on the ball, 0.1 to 0.4. Source: Mathavan et al. (2010) find 0.14 with the integrated model.
  double cushionFriction = 0.2;
  CushionModel cushionModel = CushionModel::Impulse;

  /// Of a ball that falls on cloth over slate, 0.5 to 0.6. Source: Alciatore, jump analyses (from memory).
  double slateRestitution = 0.5;
  /// Of a ball that meets the back of a pocket: common practice, no source.
  double linerRestitution = 0.2;

  /// Ball mass over the end mass of the cue's tip, 15 to 40; 0 for a cue without squirt. Source: Alciatore, technical
  /// proof A.31 (from memory).
  double squirtMassRatio = 25.0;
  /// Of a chalked tip. Source: Alciatore; Shepard (from memory).
  double tipFriction = 0.6;
  /// 0.45 to 0.60 kg; 19 ounces.
  double cueMass_kg = 0.539;
  /// Leather tip 0.71 to 0.75, hard tip 0.81 to 0.87. Source: Alciatore (from memory).
  double tipRestitution = 0.75;

  bool operator==(const PhysicsParameters&) const = default;
};

/// The literature's values with this set's size and mass.
[[nodiscard]] PhysicsParameters parametersFor(const BallSet& balls);

/// Errors: FieldInvalid with the parameter's name in files, its value and the limits of sense (wider than the ranges
/// above; what lies outside cannot be a table).
[[nodiscard]] Result<void> check(const PhysicsParameters& parameters);

/// The upright spin's decay as a friction coefficient with the ball's radius as lever:
/// decay = (5/2) friction gravity / radius. 10 rad/s^2 is 0.0117 for a pool ball.
[[nodiscard]] double spinFrictionFrom(const PhysicsParameters& parameters);

/// Moment of inertia of a solid ball, kg m^2.
[[nodiscard]] inline double inertia_kgm2(const PhysicsParameters& p) {
  return 0.4 * p.ballMass_kg * p.ballRadius_m * p.ballRadius_m;
}

}  // namespace ferrule
