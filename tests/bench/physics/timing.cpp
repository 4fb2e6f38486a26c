// SPDX-License-Identifier: GPL-3.0-or-later
// What the simulator costs, on one core.
#include <benchmark/benchmark.h>

#include "core/physics/simulator.h"
#include "tests/bench/physics/scenes.h"

namespace ferrule::bench {

namespace {

enum class Kind { EightBall, Break };

/// One simulated shot an iteration, through the scenes in turn.
void shots(benchmark::State& state, Kind kind, bool keepPaths, CushionModel cushion) {
  const std::vector<Scene> scenes = kind == Kind::Break ? breakShots(64) : eightBallShots(512);
  PhysicsParameters parameters;
  parameters.cushionModel = cushion;
  const auto simulator = Simulator::create(Table{}, parameters);
  SimulationOptions options;
  options.keepPaths = keepPaths;
  std::size_t next = 0;
  long steps = 0;
  std::size_t told = 0;
  for (auto unused : state) {
    const Scene& scene = scenes[next];
    next = next + 1 == scenes.size() ? 0 : next + 1;
    const auto s = simulator->shoot(scene.before, scene.strike, options);
    benchmark::DoNotOptimize(s);
    steps += s->steps;
    told += s->events.size();
  }
  const auto count = static_cast<double>(state.iterations());
  state.counters["steps/shot"] = static_cast<double>(steps) / count;
  state.counters["events/shot"] = static_cast<double>(told) / count;
  state.counters["steps/s"] = benchmark::Counter(static_cast<double>(steps), benchmark::Counter::kIsRate);
}

}  // namespace

BENCHMARK_CAPTURE(shots, eight_ball_shot, Kind::EightBall, false, CushionModel::Impulse)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(shots, eight_ball_shot_with_paths, Kind::EightBall, true, CushionModel::Impulse)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(shots, eight_ball_shot_integrated_cushion, Kind::EightBall, false, CushionModel::Integrated)
    ->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(shots, full_break, Kind::Break, false, CushionModel::Impulse)->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(shots, full_break_with_paths, Kind::Break, true, CushionModel::Impulse)
    ->Unit(benchmark::kMicrosecond);

}  // namespace ferrule::bench
