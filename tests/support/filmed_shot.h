// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <vector>

#include "core/base/random.h"
#include "core/physics/fingerprint.h"

namespace ferrule {

/// A simulated shot as a film would show it: sixty images a second, 0.5 mm of noise, strike and delivery read as well
/// as films allow it. before[0] is the cue ball.
[[nodiscard]] FingerprintShot filmed(const PhysicsParameters& parameters, const Position& before, const Strike& strike,
                                     Random& random);

/// The literature's table with each coefficient off by its usual spread, and the fit's names for the values.
struct Planted {
  PhysicsParameters parameters;
  std::vector<std::pair<const char*, double>> values;
};
[[nodiscard]] Planted planted(Random& random);

/// Shots from all over a table of these coefficients, half of them at a ball.
[[nodiscard]] std::vector<FingerprintShot> filmedSet(const PhysicsParameters& parameters, int count, Random& random);

}  // namespace ferrule
