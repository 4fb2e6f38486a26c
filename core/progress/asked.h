// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <span>
#include <vector>

#include "core/progress/played_shot.h"

/// What each shot was to do, for pictures of single shots.
namespace ferrule {

/// What was asked of a shot: what was meant where somebody said so, else the player's own mean over the repeats of the
/// set-up (set_ups.h), which shows how well he repeats himself, not whether he is right.
struct Asked {
  std::optional<double> speed_mps;
  std::optional<TablePoint> rest;  ///< of the cue ball
  bool speedFromRepeats = false;
  bool restFromRepeats = false;
  bool restFromPlan = false;  ///< Meant::restFromPlan

  bool operator==(const Asked&) const = default;
};

/// One for each shot of the history. Set-ups with fewer than kFewestRepeats values ask nothing.
[[nodiscard]] std::vector<Asked> askedOf(const PlayerHistory& history);

/// Of points in a plane, any unit: where 95 of 100 lie if they follow a normal law.
struct SpreadEllipse {
  double x = 0.0;  ///< the middle
  double y = 0.0;
  double longHalf = 0.0;  ///< half axes
  double shortHalf = 0.0;
  double turn_rad = 0.0;  ///< of the long axis, counter-clockwise from +x

  bool operator==(const SpreadEllipse&) const = default;
};

/// Axes: the eigenvalues of the sample covariance times the chi-squared quantile of two degrees at 95 %,
/// -2 ln 0.05 = 5.991. Nothing for fewer than three points.
[[nodiscard]] std::optional<SpreadEllipse> spreadEllipse(std::span<const std::array<double, 2>> points);

}  // namespace ferrule
