// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "tests/bench/accuracy/simulated_shots.h"

namespace ferrule::bench {

/// The standard uncertainty that a shot's film leaves at best, whoever reads it.
struct DeliveryFloor {
  double aim_rad = 0.0;
  double speed = 0.0;   ///< relative
  double side = 0.0;    ///< in ball radii
  double height = 0.0;  ///< in ball radii
};

/// The inverse of the information (Fisher's, with the priors' added) at the true strike, for every measured place of
/// the cue ball and of the first ball that it meets, each until its second cushion or its next contact: the same rule
/// that the fit goes by, with true events instead of read ones. Cloth, balls, cushions and elevation are as unknown as
/// they are to the fit. Linear around the truth; nothing where the shot has too few places, or no strike to speak of.
/// Source: the bound of Cramer and Rao; with priors, van Trees, Detection, Estimation and Modulation Theory I (1968),
/// section 2.4 (from memory).
[[nodiscard]] std::optional<DeliveryFloor> deliveryFloor(const SimulatedShot& shot);

}  // namespace ferrule::bench
