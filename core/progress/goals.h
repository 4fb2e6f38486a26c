// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/progress/player_progress.h"

namespace ferrule {

/// The key of the built-in drill that an item sends to; both halves of the cut fan are one drill.
[[nodiscard]] std::string_view keyOf(WorkDrill drill);

/// What became of the targets that the time before a period had set. A report keeps nothing, so they are worked out as
/// a report at the period's start would have set them. A target of pots is held against all tries at its drill in the
/// period together; one of speed or tip point against the spread measured in the period.
/// before: the player's history up to the period; now: of the period. Empty where nothing had been set.
[[nodiscard]] std::vector<GoalCheck> checkGoals(const PlayerHistory& before, const PlayerProgress& now,
                                                const ProgressOptions& options);

}  // namespace ferrule
