// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "core/base/progress.h"
#include "core/progress/played_shot.h"
#include "core/record/record.h"

namespace ferrule {

struct SteadierOptions {
  std::size_t mostShots = 60;  ///< played again, spread evenly over the history
  std::size_t samples = 150;   ///< plays of each, for each part of the scatter
  std::uint64_t seed = 1;

  bool operator==(const SteadierOptions&) const = default;
};

/// Plays a player's shots again with one part of the scatter drawn in by kDrawnIn, and notes in the history what the
/// chance of the frame gains (PlayedShot::steadier). A shot takes part when plans were judged beside it, the taken plan
/// is among them, and its game is one of frames won; the scatter is the one that it was judged with. The same errors
/// play every variant, so that small gains show with few plays. The opponent is taken to play alike.
///
/// history: of this record; what a stopped run noted in it is not played once more. Returns how many of the shots that
/// take part have a gain. Errors: those of Record, Planner::create();
/// Cancelled, with what was noted so far.
[[nodiscard]] Result<int> addSteadierGains(Record& record, PlayerHistory& history, const SteadierOptions& options = {},
                                           const JobControl& job = {});

}  // namespace ferrule
