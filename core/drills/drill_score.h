// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/drills/leave_scatter.h"
#include "core/drills/trial.h"
#include "core/progress/answer.h"

/// What a run of a drill came to: how often each goal was met, with Wilson's interval, and how far off it was.
namespace ferrule {

/// So many met of so many of which it is known.
struct MetShare {
  int met = 0;
  int known = 0;

  /// Wilson's, 95 %; nothing where nothing is known.
  [[nodiscard]] std::optional<Interval> interval() const;
  [[nodiscard]] std::optional<double> share() const;
  /// A share of fewer than kFewestForShare is not spoken of as one.
  [[nodiscard]] bool isEnough() const { return known >= kFewestForShare; }
  bool operator==(const MetShare&) const = default;
};

/// Mean and spread of a goal's figure, in its own unit.
struct FigureScore {
  int count = 0;
  double mean = 0.0;
  std::optional<Interval> meanInterval;  ///< from 2 on
  std::optional<double> spread;          ///< sample standard deviation, from 2 on

  bool operator==(const FigureScore&) const = default;
};

struct GoalScore {
  MetShare share;
  std::optional<FigureScore> figure;  ///< nothing where none was seen

  bool operator==(const GoalScore&) const = default;
};

struct StationScore {
  MetShare all;  ///< tries that met every goal
  std::vector<GoalScore> goals;
  std::optional<LeaveScatter> scatter;

  bool operator==(const StationScore&) const = default;
};

struct DrillScore {
  int trials = 0;
  MetShare all;                  ///< tries that met every goal
  std::vector<GoalScore> goals;  ///< of all stations together
  std::vector<StationScore> stations;
  int thick = 0;    ///< misses that were read as too thick
  int thin = 0;     ///< and as too thin
  int flagged = 0;  ///< set up worse than kSetUpTolerance_m; counted all the same

  bool operator==(const DrillScore&) const = default;
};

/// Trials of stations that the drill does not have are left out.
[[nodiscard]] DrillScore scoreOf(const Drill& drill, std::span<const DrillTrial> trials);

}  // namespace ferrule
