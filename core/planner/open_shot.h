// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/planner/candidate.h"

/// Shots whose aim is not solved for a pocket: safeties, kicks and the break. Each is a whole plan.
namespace ferrule {

/// A plan that is ready to be played.
struct ReadyShot {
  Plan plan;
  Situation situation;  ///< with the cue ball where the plan has it, no longer in hand
  double way_m = 0.0;   ///< of the cue ball to its first contact

  bool operator==(const ReadyShot&) const = default;
};

/// Thick and thin hits on every legal ball that can be met straight on, at several speeds with draw, stun and follow.
[[nodiscard]] std::vector<ReadyShot> safetyShots(const PlanningTable& table, const Situation& situation);
/// The cue ball off one or two cushions onto a legal ball, with a small fan of aims around the mirror image.
[[nodiscard]] std::vector<ReadyShot> kickShots(const PlanningTable& table, const Situation& situation);
/// Hits on the front ball of a rack from places behind the head string.
[[nodiscard]] std::vector<ReadyShot> breakShots(const PlanningTable& table, const Situation& situation);

}  // namespace ferrule
