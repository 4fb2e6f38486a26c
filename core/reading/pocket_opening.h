// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/physics/simulator.h"

namespace ferrule {

/// What a pocket takes of a ball from one place at one speed.
struct PocketOpening {
  double clockwise_rad = 0.0;         ///< how far the line may turn this way from the mouth's middle; not negative
  double counterClockwise_rad = 0.0;  ///< and the other way
  double width_m = 0.0;               ///< both, as a width across the line at the mouth
};

/// The opening of a pocket for a ball that leaves a place at a speed without spin, as after a full hit: the directions
/// around the middle of the mouth from which the ball falls, found by simulating it, jaws, facings and the rail beside
/// the pocket included. Nothing where not even the middle falls (too slow, too steep).
[[nodiscard]] std::optional<PocketOpening> pocketOpening(const Simulator& simulator, const Pocket& pocket,
                                                         TablePoint from, double speed_mps);

}  // namespace ferrule
