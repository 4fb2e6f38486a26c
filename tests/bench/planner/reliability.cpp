// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/planner/reliability.h"

#include <tbb/parallel_for.h>

#include <cmath>
#include <cstdio>
#include <string>

#include "tests/bench/planner/layouts.h"

namespace ferrule::bench {

namespace {

constexpr int kPlaysOfPlan = 64;
constexpr int kEnough = 2000;
constexpr std::size_t kPositionsAtOnce = 64;

struct Shot {
  double predicted = 0.0;
  bool potted = false;
};

std::vector<Shot> shotsFrom(const Planner& planner, const Scatter& scatter, std::uint64_t seed) {
  const Situation situation = randomEightBall(3 + static_cast<int>(seed % 12), seed);
  SearchBudget budget;
  budget.seed = seed;
  budget.mostPlans = 5;
  const auto suggestion = planner.suggest(situation, {scatter, scatter}, budget);
  std::vector<Shot> shots;
  if (!suggestion) return shots;
  for (const RankedPlan& ranked : suggestion->plans) {
    if (!ranked.plan.pocket) continue;
    ReadyShot ready{ranked.plan, situation, 0.0};
    const double between_m =
        distance(ballIn(situation.balls, kCueBall)->position, ballIn(situation.balls, ranked.plan.first)->position);
    ready.way_m = std::max(0.0, between_m - 2.0 * planner.simulator().bed().radius_m);
    const Scatter wide = scatterOfShot(planner.simulator(), ready, scatter);
    Random random(seed * 7919 + static_cast<std::uint64_t>(ranked.rank));
    for (int play = 0; play < kPlaysOfPlan; ++play) {
      const Strike strike = delivered(ranked.plan.strike, wide, drawDeviates(random), planner.simulator().parameters());
      const auto played = planner.simulator().shoot(situation.balls, strike);
      if (!played) continue;
      const Judgement judged = judge(situation, callOf(ranked.plan), *played);
      shots.push_back({ranked.chances.pot, judged.potted && !judged.foul});
    }
  }
  return shots;
}

void print(const char* name, const std::vector<Shot>& shots) {
  double brier = 0.0;
  int pots = 0;
  for (const Shot& shot : shots) {
    brier += (shot.predicted - shot.potted) * (shot.predicted - shot.potted) / static_cast<double>(shots.size());
    pots += shot.potted;
  }
  std::printf("%s: %zu shots, %.1f %% made, Brier score %.4f\n", name, shots.size(),
              100.0 * pots / static_cast<double>(shots.size()), brier);
  std::printf("    predicted     shots   mean predicted   observed   difference   standard error\n");
  double worst = 0.0;
  for (int tenth = 0; tenth < 10; ++tenth) {
    int count = 0;
    int made = 0;
    double predicted = 0.0;
    for (const Shot& shot : shots) {
      if (std::min(9, static_cast<int>(10.0 * shot.predicted)) != tenth) continue;
      ++count;
      made += shot.potted;
      predicted += shot.predicted;
    }
    if (count == 0) continue;
    const double mean = predicted / count;
    const double observed = static_cast<double>(made) / count;
    std::printf("    %2d to %3d %%  %8d  %12.1f %%  %8.1f %%  %+9.1f pt  %9.1f pt%s\n", 10 * tenth, 10 * tenth + 10,
                count, 100.0 * mean, 100.0 * observed, 100.0 * (observed - mean),
                100.0 * std::sqrt(observed * (1.0 - observed) / count), count < kEnough ? "  (few)" : "");
    if (count >= kEnough) worst = std::max(worst, std::abs(observed - mean));
  }
  std::printf("    largest difference in a tenth with %d shots or more: %.1f points\n", kEnough, 100.0 * worst);
  std::fflush(stdout);
}

}  // namespace

void printReliability(const Planner& planner, int shotsOfLevel) {
  std::printf("Reliability of the pot chance, eight-ball positions with 3 to 14 object balls\n");
  std::vector<Shot> all;
  for (const PlayerLevel level : kPlayerLevels) {
    std::vector<Shot> shots;
    std::uint64_t seed = 1;
    while (static_cast<int>(shots.size()) < shotsOfLevel) {
      std::vector<std::vector<Shot>> batch(kPositionsAtOnce);
      tbb::parallel_for(std::size_t{0}, batch.size(),
                        [&](std::size_t i) { batch[i] = shotsFrom(planner, scatterOf(level), seed + i); });
      seed += kPositionsAtOnce;
      for (const auto& some : batch)
        shots.insert(shots.end(), some.begin(), some.end());
    }
    print(std::string(toText(level)).c_str(), shots);
    all.insert(all.end(), shots.begin(), shots.end());
  }
  print("all levels", all);
}

}  // namespace ferrule::bench
