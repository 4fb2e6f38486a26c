// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/planned_ways.h"

namespace ferrule {

namespace {

constexpr double kStep_s = 0.01;
/// One point of a drawn way for every so much of it, m.
constexpr double kStep_m = 0.01;

std::vector<TablePoint> wayOf(const BallPath& path, double duration_s) {
  std::vector<TablePoint> way;
  for (double time_s = 0.0; time_s <= duration_s; time_s += kStep_s) {
    if (path.motionAt(time_s).kind == MotionKind::Gone) break;
    const TablePoint place = planOf(path.stateAt(time_s).position);
    if (way.empty() || distance(way.back(), place) >= kStep_m) way.push_back(place);
  }
  return way;
}

}  // namespace

PlannedWays plannedWays(const Simulation& simulated) {
  PlannedWays ways;
  for (const BallPath& path : simulated.paths) {
    auto way = wayOf(path, simulated.duration_s);
    if (way.size() > 1) ways.emplace_back(path.ball, std::move(way));
  }
  return ways;
}

}  // namespace ferrule
