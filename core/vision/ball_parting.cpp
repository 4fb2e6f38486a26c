// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_parting.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace ferrule {

void partBalls(std::span<BallSample> balls, double radius_m) {
  constexpr double kDeepest_m = 0.006;
  constexpr double kApart_m = 1e-6;
  constexpr int kRounds = 200;
  const double apart_m = 2.0 * radius_m;
  std::vector<std::pair<std::size_t, std::size_t>> near;
  for (std::size_t i = 0; i < balls.size(); ++i) {
    for (std::size_t j = i + 1; j < balls.size(); ++j) {
      const double between_m = distance(balls[i].position, balls[j].position);
      // Those that nearly touch may come to overlap while others are parted.
      if (between_m > apart_m - kDeepest_m && between_m < apart_m + 2.0 * kDeepest_m) near.emplace_back(i, j);
    }
  }
  for (int round = 0; round < kRounds; ++round) {
    double deepest_m = 0.0;
    for (const auto& [i, j] : near) {
      BallSample& a = balls[i];
      BallSample& b = balls[j];
      const TableVector way = b.position - a.position;
      const double overlap_m = apart_m - length(way);
      if (overlap_m <= kApart_m) continue;
      deepest_m = std::max(deepest_m, overlap_m);
      const double va = a.standardUncertainty_m * a.standardUncertainty_m;
      const double vb = b.standardUncertainty_m * b.standardUncertainty_m;
      const double shareOfA = va + vb > 0.0 ? va / (va + vb) : 0.5;
      const TableVector push = (overlap_m / length(way)) * way;
      a.position = a.position - shareOfA * push;
      b.position = b.position + (1.0 - shareOfA) * push;
    }
    if (deepest_m <= kApart_m) break;
  }
}

}  // namespace ferrule
