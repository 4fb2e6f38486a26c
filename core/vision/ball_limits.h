// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/table/table.h"

namespace ferrule {

/// Where a ball's centre can be on one table.
class BallLimits {
 public:
  BallLimits(const Table& table, double radius_m);

  /// Whether a ball there is falling, or about to.
  [[nodiscard]] bool atPocket(TablePoint point) const;
  /// The nearest place that keeps the ball within the cushions.
  [[nodiscard]] TablePoint onSurface(TablePoint point) const;

 private:
  double halfLength_m_;
  double halfWidth_m_;
  double radius_m_;
  std::array<Pocket, 6> pockets_;
};

}  // namespace ferrule
