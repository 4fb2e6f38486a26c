// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/random.h"
#include "core/physics/fingerprint.h"

namespace ferrule {

/// A simulated shot as a film would show it: sixty images a second, 0.5 mm of noise, strike and delivery read as well
/// as films allow it. before[0] is the cue ball.
[[nodiscard]] FingerprintShot filmed(const PhysicsParameters& parameters, const Position& before, const Strike& strike,
                                     Random& random);

}  // namespace ferrule
