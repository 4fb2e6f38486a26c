// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/planner/scatter.h"

namespace ferrule {

/// Kinds of strike whose scatter is told apart.
enum class StrikeKind {
  Plain,    ///< up to 2.5 m/s from a comfortable stance
  Firm,     ///< faster
  Awkward,  ///< stretched, over a rail or over a ball
};
inline constexpr std::array kStrikeKinds{StrikeKind::Plain, StrikeKind::Firm, StrikeKind::Awkward};

[[nodiscard]] StrikeKind strikeKindOf(const Stance& stance, double speed_mps);

/// One strike of a player: what was asked and what was delivered, each part with its standard uncertainty (of the
/// difference). Parts that were not observed, or not asked for, are absent.
struct StrikeEvidence {
  struct Part {
    double asked = 0.0;
    double delivered = 0.0;
    double uncertainty = 0.0;

    bool operator==(const Part&) const = default;
  };
  StrikeKind kind = StrikeKind::Plain;
  std::optional<Part> aim_rad;  ///< of the cue ball's departure
  std::optional<Part> speed_mps;
  std::optional<Part> side;
  std::optional<Part> height;

  bool operator==(const StrikeEvidence&) const = default;
};

/// What is known of a player's scatter.
struct ScatterEstimate {
  Scatter player;                 ///< over all kinds
  std::array<Scatter, 3> byKind;  ///< in the order of kStrikeKinds
  /// The 95 % interval of the player's aim, rad.
  double leastAim_rad = 0.0;
  double mostAim_rad = 0.0;
  int aims = 0;  ///< shots with an observed aim; 0: the estimate is the prior

  bool operator==(const ScatterEstimate&) const = default;
};

/// The spread of each part by a hierarchy: a player's log spread varies around the prior's by a factor of 1.5, a kind's
/// around the player's by 1.25 (standard deviations; common practice, no source), and each error is normal with the
/// kind's spread and the measurement's uncertainty added in squares. So five shots move the estimate a little and five
/// hundred decide it. Spreads are root mean squares over the posterior, as a prediction of the next shot needs them. A
/// constant bias counts as spread.
/// Source: hierarchical normal model, Gelman et al., Bayesian Data Analysis, chapter 5 (from memory).
[[nodiscard]] ScatterEstimate estimateScatter(std::span<const StrikeEvidence> strikes, const Scatter& prior);

}  // namespace ferrule
