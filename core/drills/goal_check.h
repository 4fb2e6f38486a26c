// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/drills/set_up_check.h"
#include "core/table/shot.h"

namespace ferrule {

/// What one goal came to in one try.
struct GoalResult {
  std::optional<bool> met;  ///< nothing: neither film nor person said
  /// Rest: m outside the zone, 0 within. Hidden: the open arc, rad. AngleLeft: the cut, rad. MeetsCushion: m from the
  /// zone's middle along the cushion, + toward the foot, or to the left. ComesBack: m across, + to the left. Clear:
  /// balls that fell. Nothing for the other kinds and where it could not be seen.
  std::optional<double> figure = {};

  bool operator==(const GoalResult&) const = default;
};

/// The shots of one try, in order, at least one; check: of the position before the first. A try with a scratch or a
/// foul meets no goal. A shot put in by hand leaves open what only events show.
[[nodiscard]] GoalResult checkGoal(const DrillGoal& goal, const MeasuredTable& measured, const SetUpCheck& check,
                                   std::span<const ShotReading> shots);

/// The directions in which the cue ball can meet some part of the ball, rad in all: what the other balls leave of
/// 2 asin(2R / d). Balls farther away than the ball itself hide nothing.
[[nodiscard]] double openArc_rad(const Position& balls, TablePoint cueBall, BallName ball, double radius_m);

/// The cut that is left from the cue ball's place to a ball and the middle of a pocket's mouth, unsigned.
[[nodiscard]] double cutLeft_rad(TablePoint cueBall, TablePoint object, PocketName pocket,
                                 const MeasuredTable& measured);

}  // namespace ferrule
