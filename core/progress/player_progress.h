// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/progress/data_quality.h"
#include "core/progress/entry_angle.h"
#include "core/progress/error_measure.h"
#include "core/progress/findings.h"
#include "core/progress/game_measures.h"
#include "core/progress/make_rate.h"
#include "core/progress/position_play.h"
#include "core/progress/reliability.h"
#include "core/progress/work_items.h"

/// Everything that a report or a screen says about one player's period, as one value.
namespace ferrule {

/// Shots worth looking at again, as places in PlayerProgress::history's shots.
struct Highlights {
  std::optional<std::size_t> best;         ///< made against the least chance
  std::optional<std::size_t> instructive;  ///< missed against the best chance
  double bestChance = 0.0;
  double instructiveChance = 0.0;
};

/// For one kind of intent.
struct Makes {
  Answer<Estimate> share = shortOf(ShortageKind::Shots);
  MakeGrid byCueBall;
  MakeGrid byObjectBall;
  std::array<MakeCell, 6> byPocket;
  MakesByEntry byEntry;
};

struct ProgressOptions {
  std::int64_t now_ms = 0;  ///< UTC, since 1970: what counts as the future
  Resampling resampling;

  bool operator==(const ProgressOptions&) const = default;
};

enum class GoalState { NotTried, NotYet, Met };

/// A target of the time before, and what became of it (goals.h).
struct GoalCheck {
  WorkItem item;
  GoalState state = GoalState::NotTried;
  int met = 0;  ///< tries at the drill in the period; of a target of pots
  int known = 0;
  std::optional<Interval> interval;  ///< Wilson, of the share
  std::optional<double> measured;    ///< the spread, of a target of speed or tip point

  bool operator==(const GoalCheck&) const = default;
};

struct PlayerProgress {
  PlayerHistory history;  ///< of the pocket width with most shots; all numbers are of it alone
  DataQuality quality;
  Makes inferred;
  Makes called;
  AimMeasure aim;
  StrikeMeasures strikes;
  MissSides misses;
  BreakMeasure breaks;
  InningMeasure innings;
  SafetyMeasure safeties;
  Answer<Estimate> fouls = shortOf(ShortageKind::Shots);
  Answer<Estimate> unforced = shortOf(ShortageKind::Shots);
  TimeMeasure times;
  ChoiceMeasure choices;
  PositionPlay position;
  Reliability reliability;
  std::vector<Finding> findings;
  std::vector<WorkItem> work;
  std::vector<GoalCheck> goals;  ///< filled by who knows the time before (checkGoals)
  Highlights highlights;

  /// The kind of intent with more attempts.
  [[nodiscard]] Intent mainIntent() const {
    return called.byCueBall.tried > inferred.byCueBall.tried ? Intent::Called : Intent::Inferred;
  }
  [[nodiscard]] const Makes& mainMakes() const { return mainIntent() == Intent::Called ? called : inferred; }
};

/// The same history and options give the same digits.
[[nodiscard]] PlayerProgress playerProgress(PlayerHistory history, const ProgressOptions& options);

}  // namespace ferrule
