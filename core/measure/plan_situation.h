// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planner/situation.h"
#include "core/rules/game_state.h"

namespace ferrule {

/// What a search needs of a frame's state, as the player at the table sees it: the one place where the referee's words
/// become the planner's. balls: all on the table. Push-outs and fouls in a row are left out.
[[nodiscard]] Situation situationFrom(const GameState& state, const Position& balls, const Table& table);

/// The rules of a game as the planner has them.
[[nodiscard]] PlannerRules plannerRules(const RuleSet& rules);

/// Whether the object balls stand as a rack of this game does before the break, each within 6 mm of a place.
[[nodiscard]] bool isRacked(Game game, const Position& balls, const Table& table, const BallSet& set);

}  // namespace ferrule
