// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planner/judge.h"
#include "core/rules/ruling.h"

namespace ferrule {

/// What a search needs of a frame's state, as the player at the table sees it: the one place where the referee's words
/// become the planner's. balls: all on the table. Push-outs and fouls in a row are left out.
[[nodiscard]] Situation situationFrom(const GameState& state, const Position& balls, const Table& table);

/// The rules of a game as the planner has them.
[[nodiscard]] PlannerRules plannerRules(const RuleSet& rules);

/// What a shot came to by its ruling, as the planner values it. after: the frame's state then; balls: where they rest.
[[nodiscard]] Judgement judgementFrom(const Ruling& ruling, const GameState& after, const Position& balls,
                                      const Table& table);

/// Whether the object balls stand as a rack of this game does before the break, each within 6 mm of a place.
[[nodiscard]] bool isRacked(Game game, const Position& balls, const Table& table, const BallSet& set);

}  // namespace ferrule
