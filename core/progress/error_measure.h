// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/progress/played_shot.h"
#include "core/progress/sample.h"
#include "core/progress/set_ups.h"

/// Mean and spread of a player's errors, over all and session by session.
namespace ferrule {

/// A session's value with its own interval.
struct SessionEstimate {
  std::size_t session = 0;
  Estimate estimate;

  bool operator==(const SessionEstimate&) const = default;
};

struct ErrorMeasure {
  Answer<Estimate> bias = shortOf(ShortageKind::Shots);    ///< the mean: a habit
  Answer<Estimate> spread = shortOf(ShortageKind::Shots);  ///< the standard deviation: how well it is repeated
  std::vector<SessionEstimate> series;                     ///< the spread of sessions with kFewestInSession values
  bool fromRepeats = false;                                ///< against the player's own mean; then bias is NoPlan
};

/// From errors against what was meant, or of the aim.
[[nodiscard]] ErrorMeasure errorMeasure(std::span<const Observation> errors, const Resampling& resampling);

/// Aim: to the left and right, and thick and thin by the side of the cut (shot_errors.h).
struct AimMeasure {
  ErrorMeasure all;        ///< rad, + to the left
  ErrorMeasure leftCuts;   ///< rad, + thin, of balls sent to the left
  ErrorMeasure rightCuts;  ///< rad, + thin, of balls sent to the right
};
[[nodiscard]] AimMeasure aimMeasure(const PlayerHistory& history, const Resampling& resampling);

/// Against the meant values where there are enough, else from repeated set-ups, else NoRepeats.
struct StrikeMeasures {
  ErrorMeasure speed;     ///< share of the speed
  ErrorMeasure side;      ///< ball radii
  ErrorMeasure height;    ///< ball radii
  ErrorMeasure position;  ///< m, of the cue ball's rest, along and across taken together
};
[[nodiscard]] StrikeMeasures strikeMeasures(const PlayerHistory& history, const Resampling& resampling);

}  // namespace ferrule
