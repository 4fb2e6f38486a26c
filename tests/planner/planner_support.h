// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/planner/planner.h"
#include "core/rules/game_state.h"

namespace ferrule::testing {

/// One planner for a nine-foot table and the literature's coefficients; made once.
[[nodiscard]] const Planner& ninefoot();

/// A ball at a place in widths of the playing surface from the head right corner.
[[nodiscard]] BallAt ballAt(int number, double along, double across);

/// A frame that is joined in the middle. group: "solids", "stripes" or "open", for eight-ball.
[[nodiscard]] Situation situationOf(Game game, const Position& balls, const std::string& group = "open");

/// The same balls, left and right exchanged.
[[nodiscard]] Position mirroredAcross(Position balls);

}  // namespace ferrule::testing
