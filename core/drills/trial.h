// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/drills/goal_check.h"

namespace ferrule {

/// One try at a drill, from the film or as a person said it.
struct DrillTrial {
  std::size_t station = 0;
  std::vector<GoalResult> goals;         ///< in the order of the station's goals
  std::optional<TablePoint> leave = {};  ///< where the cue ball came to rest after the first shot
  std::optional<MissSide> missSide = {};
  std::optional<double> setUpError_m = {};  ///< of the ball that lay farthest off; nothing where nobody looked
  std::vector<std::size_t> shots = {};      ///< which of the shots that were counted, from 0; empty by hand

  /// All goals met; false when one was missed; nothing when none was missed and one is not known.
  [[nodiscard]] std::optional<bool> succeeded() const;
  /// Set up worse than a person sets balls down (kSetUpTolerance_m).
  [[nodiscard]] bool isFlagged() const { return setUpError_m && *setUpError_m > kSetUpTolerance_m; }
  bool operator==(const DrillTrial&) const = default;
};

/// What a person says of a try.
struct SaidTrial {
  std::optional<bool> met;  ///< of the first goal, unless the leave decides it
  std::optional<MissSide> missSide = {};
  std::optional<TablePoint> leave = {};
  std::vector<std::optional<bool>> further = {};  ///< of the goals after the first, as far as they are said
  bool fouled = false;

  bool operator==(const SaidTrial&) const = default;
};

/// A leave decides the goals that speak of where the cue ball rests or of the angle from there (the other balls taken
/// as they were set up); what was said decides the rest.
[[nodiscard]] DrillTrial trialAsSaid(const DrillStation& station, std::size_t number, const MeasuredTable& measured,
                                     const SaidTrial& said);

}  // namespace ferrule
