// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/planner/timing.h"

#include <tbb/global_control.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <thread>

#include "tests/bench/median.h"
#include "tests/bench/planner/layouts.h"

namespace ferrule::bench {
namespace {

constexpr int kPositions = 12;

double wall_s() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

/// Of all threads of this program: other programs do not count.
double processor_s() {
  timespec now{};
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

struct Spent {
  double first_s = 0.0;
  double settled_s = 0.0;
  double firstProcessor_s = 0.0;
  double settledProcessor_s = 0.0;
  long simulations = 0;
};

}  // namespace

void printTiming(const Planner& planner) {
  const double begun_s = wall_s();
  const double begunProcessor_s = processor_s();
  const PocketWindows again(planner.simulator());
  std::printf("Preparing a table: %.3f s, %.3f s of processor\n", wall_s() - begun_s, processor_s() - begunProcessor_s);
  std::printf("15 balls, club scatter, %d positions; processor time leaves other programs out\n", kPositions);
  std::printf("    cores   first list s   largest   settled s   largest   processor first, settled s   shots per s\n");
  const auto cores = std::max(2U, std::thread::hardware_concurrency());
  const Scatter scatter = scatterOf(PlayerLevel::Club);
  for (unsigned n = 1; n <= cores; ++n) {
    const tbb::global_control control(tbb::global_control::max_allowed_parallelism, n);
    std::vector<double> first;
    std::vector<double> settled;
    std::vector<double> firstProcessor;
    std::vector<double> settledProcessor;
    double total_s = 0.0;
    long simulations = 0;
    for (std::uint64_t seed = 1; seed <= kPositions; ++seed) {
      const Situation situation = randomEightBall(15, seed);
      Spent spent;
      const double start_s = wall_s();
      const double startProcessor_s = processor_s();
      bool any = false;
      const auto suggestion = planner.suggest(situation, {scatter, scatter}, {}, [&](const Suggestion&) {
        if (any) return;
        any = true;
        spent.first_s = wall_s() - start_s;
        spent.firstProcessor_s = processor_s() - startProcessor_s;
      });
      spent.settled_s = wall_s() - start_s;
      first.push_back(spent.first_s);
      settled.push_back(spent.settled_s);
      firstProcessor.push_back(spent.firstProcessor_s);
      settledProcessor.push_back(processor_s() - startProcessor_s);
      total_s += spent.settled_s;
      simulations += suggestion ? suggestion->simulations : 0;
    }
    std::printf("    %5u   %12.3f   %7.3f   %9.3f   %7.3f   %15.3f, %9.3f   %11.0f\n", n, median(first),
                std::ranges::max(first), median(settled), std::ranges::max(settled), median(firstProcessor),
                median(settledProcessor), static_cast<double>(simulations) / total_s);
    std::fflush(stdout);
  }
}

}  // namespace ferrule::bench
