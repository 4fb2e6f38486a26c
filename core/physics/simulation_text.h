// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/physics/simulation.h"

namespace ferrule {

/// A simulation in the form of the files: lengths in mm, times in s from the strike, rounded to a micrometre and a
/// microsecond.
///
///     {"format": "ferrule-simulated/1", "duration_s",
///      "events": [{"t_s", "kind": "ball"|"cushion"|"pocket"|"off-table", "ball", "other"|"cushion"|"pocket"}],
///      "after": [{"ball", "x_mm", "y_mm"} or {"ball", "pocket"} or {"ball", "off_table": true}]}
[[nodiscard]] std::string simulationText(const Simulation& simulation);

}  // namespace ferrule
