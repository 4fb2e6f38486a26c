// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>

#include "core/planner/planner.h"

namespace ferrule {

/// How far the cue may be aimed off to each side before the meant ball no longer falls, all else as asked.
struct AimMargin {
  double left_rad = 0.0;   ///< counter-clockwise
  double right_rad = 0.0;  ///< clockwise

  bool operator==(const AimMargin&) const = default;
};

/// Found by playing the plan with its aim turned, to a hundredth of itself, at most 0.1 rad. Nothing for a plan that
/// means no pot or whose faultless play pots nothing.
[[nodiscard]] std::optional<AimMargin> aimMargin(const Planner& planner, const Situation& situation, const Plan& plan);

/// What a person would rather try.
struct StrikeWish {
  double speed_mps = 0.0;
  double side = 0.0;    ///< ball radii
  double height = 0.0;  ///< ball radii

  bool operator==(const StrikeWish&) const = default;
};

/// The same shot with another speed and tip point. A pot is aimed anew, so that squirt, swerve and throw of the other
/// strike do not spoil it; a safety or a break keeps its aim. Its rank is 0.
/// Nothing where no aim pots the ball so, or where the strike is none.
[[nodiscard]] std::optional<RankedPlan> withOtherStrike(const Planner& planner, const Situation& situation,
                                                        const Plan& plan, const StrikeWish& wish,
                                                        const std::array<Scatter, 2>& players, std::uint64_t seed = 1);

}  // namespace ferrule
