// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/leave_scatter.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

std::optional<LeaveScatter> leaveScatter(std::span<const TablePoint> leaves) {
  if (leaves.size() < static_cast<std::size_t>(kFewestForEllipse)) return std::nullopt;
  const double count = static_cast<double>(leaves.size());
  LeaveScatter scatter;
  scatter.count = static_cast<int>(leaves.size());
  for (const TablePoint leave : leaves)
    scatter.mean = scatter.mean + (leave - TablePoint{}) / count;
  double xx = 0.0;
  double xy = 0.0;
  double yy = 0.0;
  for (const TablePoint leave : leaves) {
    const TableVector away = leave - scatter.mean;
    xx += away.x * away.x / (count - 1.0);
    xy += away.x * away.y / (count - 1.0);
    yy += away.y * away.y / (count - 1.0);
  }
  // Eigenvalues of a symmetric 2 x 2 matrix: m +- sqrt(d² + xy²), m and d half the sum and half the difference of its
  // diagonal.
  const double middle = 0.5 * (xx + yy);
  const double root = std::hypot(0.5 * (xx - yy), xy);
  scatter.along_m = std::sqrt(middle + root);
  scatter.across_m = std::sqrt(std::max(0.0, middle - root));
  scatter.direction_rad = 0.5 * std::atan2(2.0 * xy + 0.0, xx - yy);
  return scatter;
}

}  // namespace ferrule
