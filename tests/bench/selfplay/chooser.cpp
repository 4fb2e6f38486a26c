// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/selfplay/chooser.h"

#include <algorithm>

#include "core/planner/shot_trials.h"

namespace ferrule::bench {

namespace {

constexpr std::size_t kGreedyCandidates = 10;
constexpr std::size_t kGreedySamples = 48;
constexpr double kPlainSpeeds[] = {1.1, 1.7};

std::optional<Plan> easiestPot(const Planner& planner, const Situation& s, const Scatter& scatter, std::uint64_t seed) {
  const PlanningTable table{planner.simulator(), planner.windows()};
  const FrameValue value(planner.simulator(), planner.windows(), {scatter, scatter});
  const TrialContext context{table, value, scatter, 0.0};
  const auto deviates = commonDeviates(seed, kGreedySamples);
  const auto share = [&](const Entry& entry, auto&& counts) {
    return std::ranges::count_if(deviates, [&](const Deviates& d) {
      return counts(playSample(planner.simulator(), value, entry.shot, entry.scatter, d));
    });
  };
  std::optional<Plan> best;
  std::ptrdiff_t most = 0;
  for (const auto& candidate : candidatesOf(table, s, scatter, kGreedyCandidates)) {
    for (const double factor : kPlainSpeeds) {
      const auto entry = solveTrial(context, {candidate, factor * candidate->leastSpeed_mps, 0.0, 0.0});
      if (!entry) continue;
      const auto pots = share(*entry, [](const Sample& sample) { return sample.potted; });
      if (pots <= most) continue;
      most = pots;
      best = entry->shot.plan;
    }
  }
  if (best) return best;
  // The hit that is legal most often; the first of equals.
  most = -1;
  const auto open = openShotsOf(table, s, scatter);
  constexpr std::size_t kLooks = 40;
  const std::size_t step = std::max<std::size_t>(1, open.size() / kLooks);
  for (std::size_t i = 0; i < open.size(); i += step) {
    Entry entry;
    entry.shot = open[i];
    entry.scatter = scatterOfShot(planner.simulator(), open[i], scatter);
    const auto legal = share(entry, [](const Sample& sample) { return !sample.foul; });
    if (legal <= most) continue;
    most = legal;
    best = open[i].plan;
  }
  return best;
}

}  // namespace

std::optional<Plan> choose(const Chooser& chooser, const Planner& planner, const Situation& situation,
                           const Scatter& scatter, std::uint64_t seed) {
  if (chooser.kind == ChooserKind::Greedy) return easiestPot(planner, situation, scatter, seed);
  SearchBudget budget;
  budget.mostSimulations = chooser.simulations;
  budget.seed = seed;
  budget.deeper = chooser.deeper;
  const auto suggestion = planner.suggest(situation, {scatter, scatter}, budget);
  if (!suggestion) return std::nullopt;
  return suggestion->plans.front().plan;
}

}  // namespace ferrule::bench
