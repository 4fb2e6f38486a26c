// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <vector>

#include "core/physics/simulation.h"

namespace ferrule {

/// The ways of the balls of a plan that comes out as asked, each as points along it; balls that stay have none.
using PlannedWays = std::vector<std::pair<BallName, std::vector<TablePoint>>>;

/// simulated: with its paths kept.
[[nodiscard]] PlannedWays plannedWays(const Simulation& simulated);

}  // namespace ferrule
