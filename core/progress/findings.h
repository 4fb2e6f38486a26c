// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/progress/difficulty.h"
#include "core/progress/error_measure.h"
#include "core/progress/played_shot.h"
#include "core/progress/sample.h"

/// What may be said of a player in words. Many things are looked at in every report, so each must be surer than if it
/// stood alone: all findings of one report together raise a false alarm in at most 5 of 100 reports about players of
/// whom none is true (chance.h, standing).
namespace ferrule {

enum class FindingKind {
  AimTrend,      ///< the aim's spread over the sessions, rad
  SpeedTrend,    ///< the speed's spread over the sessions, share
  MakeTrend,     ///< pots made, allowing for difficulty, over the sessions, share
  LateAim,       ///< the aim's spread after kLate_min of a session against before, rad
  LateMakes,     ///< pots made after kLate_min against before, allowing for difficulty, share
  MatchMakes,    ///< pots made in matches against practice, allowing for difficulty, share
  AimSide,       ///< mean of the aim's error, rad, + to the left; from: 0. Only where cuts to both sides show it; the
                 ///< two kinds below then do not stand beside it
  LeftCutSide,   ///< mean on balls cut to the left, rad, + thin; from: 0
  RightCutSide,  ///< mean on balls cut to the right, rad, + thin; from: 0
};

/// A change or a habit: from one value to another.
struct Finding {
  FindingKind kind = FindingKind::AimTrend;
  std::optional<Shortage> shortage;  ///< why there is nothing to say; the rest then means nothing
  double from = 0.0;
  double to = 0.0;
  std::optional<Interval> change;  ///< of to - from, from drawing sessions again
  double chance = 1.0;             ///< how often chance alone shows as much
  bool stands = false;             ///< holds together with all other findings at 5 %
  int shots = 0;
  int sessions = 0;

  bool operator==(const Finding&) const = default;
};

/// When tiredness is looked for, min. Common practice, no source.
inline constexpr double kLate_min = 40.0;

/// One of each kind, in the order of FindingKind. Trends are straight lines through the sessions over their dates,
/// weighted by shots; differences within sessions are means over sessions. Chances by shuffling sessions or their
/// signs.
[[nodiscard]] std::vector<Finding> findings(const PlayerHistory& history, const std::optional<Difficulty>& difficulty,
                                            const StrikeMeasures& strikes, const AimMeasure& aim,
                                            const Resampling& resampling);

/// The finding of a kind; all kinds are there.
[[nodiscard]] const Finding& findingOf(const std::vector<Finding>& all, FindingKind kind);

}  // namespace ferrule
