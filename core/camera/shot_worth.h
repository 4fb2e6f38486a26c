// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "core/camera/error_map.h"
#include "core/table/pocket.h"

namespace ferrule {

/// What the uncertainty of the picture is worth in one shot: how far a perfect player misses who trusts it.
struct ShotWorth {
  double cut_rad = 0.0;      ///< between the cue ball's and the object ball's way, 0 is straight
  double cutU_rad = 0.0;     ///< standard uncertainty of it
  double lineU_rad = 0.0;    ///< of the object ball's way against the way to the pocket's middle
  double atPocketU_m = 0.0;  ///< the same at the pocket's mouth
  double room_m = 0.0;       ///< what the mouth leaves to either side of a ball rolling at its middle
  double chance = 0.0;       ///< that the ball passes the mouth untouched, by the picture's errors alone
  /// Shares of lineU_rad's square, largest first: what to improve is the first.
  std::vector<std::pair<ErrorComponent, double>> shares;
};

/// The cue ball is struck along the line that pots the object ball by the picture; the balls really lie elsewhere by
/// the map's errors, shared ones shared. Pure geometry of spheres: no throw, no squirt, no player's scatter. Nothing
/// when the object ball cannot be cut to the pocket from there (90 degrees or more), or lies out of sight.
[[nodiscard]] std::optional<ShotWorth> shotWorth(const ErrorMap& map, TablePoint cueBall, TablePoint objectBall,
                                                 const Pocket& pocket);

/// The same when every ball's place is off by so much whatever the map says: off_m is the rms distance from the truth,
/// the same in all directions, each ball by itself. shares is empty.
[[nodiscard]] std::optional<ShotWorth> shotWorthOf(double off_m, double radius_m, TablePoint cueBall,
                                                   TablePoint objectBall, const Pocket& pocket);

/// Where the cue ball lies for a cut of so much, distance_m before it meets the object ball. cut_rad: + when the object
/// ball leaves to the left of the cue ball's way; within 90 degrees (a contract).
[[nodiscard]] TablePoint cueBallForCut(TablePoint objectBall, const Pocket& pocket, double radius_m, double cut_rad,
                                       double distance_m);

}  // namespace ferrule
