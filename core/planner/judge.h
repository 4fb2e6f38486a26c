// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/simulation.h"
#include "core/planner/situation.h"

namespace ferrule {

/// What becomes of the turn.
enum class ShotEnding { Win, Loss, KeepsTurn, PassesTurn, Foul };

/// What a simulated shot came to.
struct Judgement {
  ShotEnding ending = ShotEnding::PassesTurn;
  bool potted = false;   ///< the called ball fell in the called pocket, whatever else happened
  bool scratch = false;  ///< the cue ball fell or left the table
  bool foul = false;
  int points = 0;  ///< for the player, in games that count them
  Situation next;  ///< as its player sees it; not for Win and Loss

  bool operator==(const Judgement&) const = default;
};

/// call: the ball and pocket that the player means; nothing for a safety or a break.
/// Source: world rules of play, sections 2, 3, 4, 6 and 9 as far as a search needs them (see PlannerRules).
[[nodiscard]] Judgement judge(const Situation& before, const std::optional<PocketedBall>& call,
                              const Simulation& played);

}  // namespace ferrule
