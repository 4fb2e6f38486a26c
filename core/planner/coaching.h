// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/planner/planner.h"

namespace ferrule {

/// One position as it is for players of different skill.
struct LevelAnswer {
  Scatter scatter;
  Suggestion suggestion;

  bool operator==(const LevelAnswer&) const = default;
};

/// What is suggested to each of these players, against an opponent of the same skill. Errors: as Planner::suggest().
[[nodiscard]] Result<std::vector<LevelAnswer>> suggestToEach(const Planner& planner, const Situation& situation,
                                                             std::span<const Scatter> players,
                                                             const SearchBudget& budget = {});

/// A place of the cue ball from which a player should play safe.
struct SafetyPlace {
  TablePoint cueBall;
  double safety = 0.0;  ///< value of the best safety
  double attack = 0.0;  ///< value of the best pot; 0 where there is none

  bool operator==(const SafetyPlace&) const = default;
};

/// Walks the cue ball from one place to another and finds the first of so many even steps from which a safety is worth
/// more than any pot to this player: "from here on you should choose safety". Places where the cue ball cannot lie are
/// stepped over. Nothing where no place of the walk asks for one.
[[nodiscard]] std::optional<SafetyPlace> firstSafetyPlace(const Planner& planner, const Situation& situation,
                                                          const Scatter& player, TablePoint from, TablePoint to,
                                                          int steps, const SearchBudget& budget = {});

}  // namespace ferrule
