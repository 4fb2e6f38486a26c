// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/coaching.h"

#include <algorithm>

namespace ferrule {

Result<std::vector<LevelAnswer>> suggestToEach(const Planner& planner, const Situation& situation,
                                               std::span<const Scatter> players, const SearchBudget& budget) {
  std::vector<LevelAnswer> answers;
  for (const Scatter& scatter : players) {
    auto suggestion = planner.suggest(situation, {scatter, scatter}, budget);
    if (!suggestion) return tl::make_unexpected(suggestion.error());
    answers.push_back({scatter, std::move(*suggestion)});
  }
  return answers;
}

std::optional<SafetyPlace> firstSafetyPlace(const Planner& planner, const Situation& situation, const Scatter& player,
                                            TablePoint from, TablePoint to, int steps, const SearchBudget& budget) {
  for (int step = 0; step <= steps; ++step) {
    const TablePoint place = from + (static_cast<double>(step) / std::max(steps, 1)) * (to - from);
    const auto suggestion = planner.suggest(withCueBallAt(situation, place), {player, player}, budget);
    if (!suggestion || suggestion->plans.front().plan.pocket) continue;
    SafetyPlace found{place, suggestion->plans.front().chances.value, 0.0};
    const auto pot = std::ranges::find_if(suggestion->plans,
                                          [](const RankedPlan& ranked) { return ranked.plan.pocket.has_value(); });
    if (pot != suggestion->plans.end()) found.attack = pot->chances.value;
    return found;
  }
  return std::nullopt;
}

}  // namespace ferrule
