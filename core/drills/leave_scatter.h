// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/geometry/frames.h"

namespace ferrule {

/// How the cue ball's rest places of one station scatter.
struct LeaveScatter {
  TablePoint mean;
  double along_m = 0.0;        ///< standard deviation along the direction in which they vary most
  double across_m = 0.0;       ///< and across it
  double direction_rad = 0.0;  ///< in (-pi/2, pi/2]
  int count = 0;

  bool operator==(const LeaveScatter&) const = default;
};

/// With fewer places an ellipse says nothing: its axes are uncertain by half and more.
inline constexpr int kFewestForEllipse = 5;

/// Nothing below kFewestForEllipse. The axes are the roots of the sample covariance's eigenvalues.
[[nodiscard]] std::optional<LeaveScatter> leaveScatter(std::span<const TablePoint> leaves);

}  // namespace ferrule
