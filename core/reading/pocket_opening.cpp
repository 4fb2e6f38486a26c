// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/pocket_opening.h"

#include <array>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kWidest_rad = 0.6;  ///< a wider line than this is not aimed at the pocket
constexpr int kCoarse = 48;
constexpr int kHalvings = 9;

bool falls(const Simulator& simulator, const Pocket& pocket, TablePoint from, double direction_rad, double speed_mps) {
  BallState ball = ballAtRest(BallName(1), from, simulator.parameters());
  ball.velocity = {speed_mps * std::cos(direction_rad), speed_mps * std::sin(direction_rad), 0.0};
  SimulationOptions options;
  options.keepPaths = false;
  options.mostTime_s = 20.0;
  const std::array balls{ball};
  const auto simulation = simulator.run(balls, options);
  return simulation && simulation->after.front().pocket == pocket.name;
}

}  // namespace

std::optional<PocketOpening> pocketOpening(const Simulator& simulator, const Pocket& pocket, TablePoint from,
                                           double speed_mps) {
  const TableVector way = pocket.mouth - from;
  const double middle_rad = direction(way);
  if (!falls(simulator, pocket, from, middle_rad, speed_mps)) return std::nullopt;
  const auto edge = [&](double sign) {
    double inside = 0.0;
    double outside = kWidest_rad;
    // The nearest edge: farther out the ball may come in again off a rail.
    const double step = std::min(kWidest_rad, 0.25 / std::max(0.05, length(way))) / kCoarse;
    for (int i = 1; i <= kCoarse; ++i) {
      if (falls(simulator, pocket, from, middle_rad + sign * i * step, speed_mps)) {
        inside = i * step;
        continue;
      }
      outside = i * step;
      break;
    }
    if (outside - inside > 1.5 * step) return inside;
    for (int i = 0; i < kHalvings; ++i) {
      const double middle = 0.5 * (inside + outside);
      (falls(simulator, pocket, from, middle_rad + sign * middle, speed_mps) ? inside : outside) = middle;
    }
    return inside;
  };
  PocketOpening opening{edge(-1.0), edge(1.0), 0.0};
  opening.width_m = length(way) * (std::tan(opening.clockwise_rad) + std::tan(opening.counterClockwise_rad));
  return opening;
}

}  // namespace ferrule
