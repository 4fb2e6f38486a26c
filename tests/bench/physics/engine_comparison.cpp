// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/physics/engine_comparison.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <optional>

#include "core/geometry/units.h"
#include "core/physics/simulator.h"
#include "tests/bench/physics/engine.h"
#include "tests/support/processor_time.h"

namespace ferrule::bench {

namespace {

/// The engine has settled when halving its step moves no resting ball by more than this and pockets the same balls.
constexpr double kSettled_m = 1e-3;
constexpr double kFirstStep_s = 1e-3;
constexpr int kMostHalvings = 8;
constexpr double kMostTime_s = 10.0;

/// Farthest resting ball, or nothing where a ball ended otherwise.
std::optional<double> farthest_m(const std::vector<FinalBall>& one, const std::vector<FinalBall>& other) {
  double worst_m = 0.0;
  for (std::size_t i = 0; i < one.size(); ++i) {
    if (one[i].fate != other[i].fate || one[i].pocket != other[i].pocket) return std::nullopt;
    if (one[i].fate == BallFate::OnTable) worst_m = std::max(worst_m, distance(one[i].position, other[i].position));
  }
  return worst_m;
}

/// Of one shot; the fastest of some batches, as the engine runs alone too.
double simulatorTime_s(const Simulator& simulator, const Scene& scene) {
  SimulationOptions options;
  options.keepPaths = false;
  double best_s = 1.0;
  for (int batch = 0; batch < 5; ++batch) {
    constexpr int kShots = 50;
    const double start_s = processorTime_s();
    for (int i = 0; i < kShots; ++i) {
      const auto s = simulator.shoot(scene.before, scene.strike, options);
      if (!s) return 0.0;
    }
    best_s = std::min(best_s, (processorTime_s() - start_s) / kShots);
  }
  return best_s;
}

struct Settled {
  double step_s = 0.0;
  double time_s = 0.0;
  double left_m = 0.0;  ///< what the next halving still moved
  bool reached = false;
};

Settled settle(const PhysicsParameters& p, const Scene& scene, std::vector<FinalBall>& finest) {
  double step_s = kFirstStep_s;
  EngineRun coarse = playInEngine(Table{}, p, scene, step_s, kMostTime_s);
  Settled result{step_s, coarse.time_s, NAN, false};
  finest = coarse.after;
  for (int i = 0; i < kMostHalvings; ++i) {
    EngineRun fine = playInEngine(Table{}, p, scene, step_s / 2.0, kMostTime_s);
    if (!fine.ended) break;
    const auto moved_m = farthest_m(coarse.after, fine.after);
    result = {step_s, coarse.time_s, moved_m.value_or(NAN), moved_m && *moved_m <= kSettled_m};
    finest = fine.after;
    if (result.reached) break;
    coarse = std::move(fine);
    step_s /= 2.0;
  }
  return result;
}

}  // namespace

void printEngineComparison() {
  std::printf(
      "\nThe same scenes in a rigid-body engine (ODE), one core. Its step is halved from 1 ms until halving again "
      "moves\n"
      "no resting ball by more than %.0f mm and pockets the same balls; then the coarser of the two steps counts. "
      "'left'\n"
      "is what the last halving still moved ('fate': another ball was pocketed); where it had not settled when a run\n"
      "took more than %.0f s, or after %d halvings, the factor is a lower bound. 'apart' is how far the engine's "
      "finest\n"
      "result lies from the simulator's: they model cushions and clusters differently.\n\n",
      millimetresFromMetres(kSettled_m), kMostTime_s, kMostHalvings);
  std::printf("%-13s %9s %10s %12s %13s %10s %10s\n", "scene", "step us", "left mm", "engine ms", "simulator us",
              "factor", "apart mm");
  const PhysicsParameters p;
  const auto simulator = Simulator::create(Table{}, p);
  std::vector<double> factors;
  const auto row = [&](const char* name, int number, const Scene& scene) {
    std::vector<FinalBall> finest;
    const Settled engine = settle(p, scene, finest);
    const double ours_s = simulatorTime_s(*simulator, scene);
    const auto apart_m = farthest_m(finest, simulator->shoot(scene.before, scene.strike)->after);
    const double factor = engine.time_s / ours_s;
    factors.push_back(factor);
    const auto millimetres = [](std::optional<double> value_m, char* text, std::size_t size) {
      if (value_m && !std::isnan(*value_m)) {
        std::snprintf(text, size, "%.3f", millimetresFromMetres(*value_m));
      } else {
        std::snprintf(text, size, "fate");
      }
      return text;
    };
    char left[32];
    char apart[32];
    std::printf("%-10s %2d %9.3f %10s %12.1f %13.2f %s%9.0f %10s\n", name, number, 1e6 * engine.step_s,
                millimetres(engine.left_m, left, sizeof left), 1e3 * engine.time_s, 1e6 * ours_s,
                engine.reached ? " " : ">", factor, millimetres(apart_m, apart, sizeof apart));
    std::fflush(stdout);
  };
  // Nothing here meets a cushion: both solve the same equations, and must agree.
  row("no cushion", 1, {{{kCueBall, {-0.6, 0.0}}, {BallName(1), {0.0, 0.02}}}, {0.0, 0.8, 0.1, 0.1, 0.0}});
  row("no cushion", 2, {{{kCueBall, {-0.6, 0.2}}, {BallName(1), {0.0, 0.17}}}, {0.0, 1.0, -0.2, -0.3, 0.0}});
  int number = 0;
  for (const Scene& scene : eightBallShots(10))
    row("shot", ++number, scene);
  number = 0;
  for (const Scene& scene : breakShots(2))
    row("break", ++number, scene);
  std::ranges::sort(factors);
  std::printf("\nfactor: least %.0f, median %.0f\n", factors.front(), factors[factors.size() / 2]);
}

}  // namespace ferrule::bench
