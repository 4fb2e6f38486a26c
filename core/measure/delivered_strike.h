// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/physics/strike.h"
#include "core/table/shot.h"

namespace ferrule {

/// A measured delivery as a strike to simulate: its aim is the cue's direction, while what was measured is the ball's
/// departure. Tip point and elevation that were not observed are those of a plain strike. Nothing without aim and
/// speed.
[[nodiscard]] std::optional<Strike> deliveredStrike(const Delivery& delivery, const PhysicsParameters& parameters);

}  // namespace ferrule
