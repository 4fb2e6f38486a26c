// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/planner/planner.h"

namespace ferrule {

/// A suggestion in the form of the files: lengths in mm, angles in degrees.
///
///     {"format": "ferrule-suggested/1", "planner", "simulations", "settled",
///      "scatter": {"aim_deg", "speed", "side", "height", "elevation_deg"},
///      "plans": [{"rank", "ball", "pocket", "kind", "first", "cushions", "aim_deg", "speed_m_s", "side", "height",
///         "elevation_deg", "cue_x_mm", "cue_y_mm", "pot_chance", "pot_chance_u", "foul_chance", "scratch_chance",
///         "value", "value_u", "leave_x_mm", "leave_y_mm", "leave_along_mm", "leave_across_mm", "leave_deg", "why"}]}
///
/// aim_deg is the cue's direction, as simulate reads it, with the digits that play the same shot again. pocket is null
/// where nothing is meant to fall; pot_chance is then null too. cue_x_mm and cue_y_mm are null unless the cue ball is
/// in hand. Fields ending in _u are Monte-Carlo standard errors. why: one sentence for each plan.
[[nodiscard]] std::string suggestionText(const Suggestion& suggestion, const Scatter& scatter,
                                         const std::vector<std::string>& why);

}  // namespace ferrule
