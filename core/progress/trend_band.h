// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/progress/chance.h"

namespace ferrule {

/// Where the line may lie at one time.
struct BandPoint {
  double when = 0.0;
  Interval value;

  bool operator==(const BandPoint&) const = default;
};

/// The band of the weighted line through the points (chance.h, lineThrough), at count >= 2 times from the first point's
/// to the last one's: at each time the 95 % interval from drawing sessions again (sample.h, sessionInterval). Empty
/// below kFewestForTrend points. points: one a session, in order of time.
[[nodiscard]] std::vector<BandPoint> trendBand(std::span<const SeriesPoint> points, int count,
                                               const Resampling& resampling);

}  // namespace ferrule
