// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_limits.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

BallLimits::BallLimits(const Table& table, double radius_m)
    : halfLength_m_(table.length_m / 2.0),
      halfWidth_m_(table.width_m / 2.0),
      radius_m_(radius_m),
      pockets_(pockets(table)) {}

bool BallLimits::atPocket(TablePoint point) const {
  constexpr double kIntoNose = 0.3;  // of the radius; a ball on the table keeps a whole one away
  constexpr double kBeforeHole_m = 0.03;
  if (std::abs(point.x) > halfLength_m_ - kIntoNose * radius_m_) return true;
  if (std::abs(point.y) > halfWidth_m_ - kIntoNose * radius_m_) return true;
  return std::ranges::any_of(pockets_, [&](const Pocket& pocket) {
    return distance(point, pocket.hole) < pocket.holeRadius_m + kBeforeHole_m;
  });
}

TablePoint BallLimits::onSurface(TablePoint point) const {
  const double x = halfLength_m_ - radius_m_;
  const double y = halfWidth_m_ - radius_m_;
  return {std::clamp(point.x, -x, x), std::clamp(point.y, -y, y)};
}

}  // namespace ferrule
