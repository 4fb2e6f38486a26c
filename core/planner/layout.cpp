// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/layout.h"

#include <algorithm>

namespace ferrule {

Layout layoutOf(const Position& balls) {
  Layout layout;
  for (const BallAt& ball : balls) {
    layout.present = layout.present | BallMask::of(ball.ball);
    layout.place[static_cast<std::size_t>(ball.ball.number())] = ball.position;
  }
  return layout;
}

bool isOpen(const Layout& layout, TablePoint from, TablePoint to, BallMask leftOut, double ballRadius_m,
            double clearance_m) {
  const TableVector way = to - from;
  const double squared = dot(way, way);
  const double reach_m = 2.0 * ballRadius_m + clearance_m;
  for (BallMask others = layout.present - leftOut; !others.empty(); others = others - BallMask::of(others.lowest())) {
    const TableVector between = layout.at(others.lowest()) - from;
    const double share = squared > 0.0 ? std::clamp(dot(between, way) / squared, 0.0, 1.0) : 0.0;
    const TableVector nearest = between - share * way;
    if (dot(nearest, nearest) < reach_m * reach_m) return false;
  }
  return true;
}

}  // namespace ferrule
