// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/suggested_shot.h"

#include "core/physics/simulator.h"

namespace ferrule {

std::optional<SuggestedShot> suggestedShot(const StoredShot& shot, const MeasuredTable& measured) {
  if (!shot.suggestion) return std::nullopt;
  auto kept = suggestionFromText(shot.suggestion->content);
  if (!kept || kept->suggestion.plans.empty()) return std::nullopt;
  const Plan& plan = kept->suggestion.plans.front().plan;
  Position placed = shot.reading.before;
  if (plan.cueBall) {
    std::erase_if(placed, [](const BallAt& at) { return at.ball.isCueBall(); });
    placed.insert(placed.begin(), {kCueBall, *plan.cueBall});
  }
  PlannedWays ways;
  if (const auto simulator = Simulator::create(measured.table, parametersFor(measured.balls))) {
    if (const auto played = simulator->shoot(placed, plan.strike)) ways = plannedWays(*played);
  }
  return SuggestedShot{std::move(*kept), std::move(ways)};
}

}  // namespace ferrule
