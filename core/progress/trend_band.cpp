// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/trend_band.h"

#include "core/base/contract.h"

namespace ferrule {

std::vector<BandPoint> trendBand(std::span<const SeriesPoint> points, int count, const Resampling& resampling) {
  FERRULE_REQUIRE(count >= 2);
  std::vector<BandPoint> band;
  if (points.size() < static_cast<std::size_t>(kFewestForTrend)) return band;
  const double first = points.front().when;
  const double last = points.back().when;
  if (!(last > first)) return band;
  std::vector<SeriesPoint> drawn;
  for (int i = 0; i < count; ++i) {
    const double when = first + (last - first) * i / (count - 1);
    const auto interval = sessionInterval(
        points.size(),
        [&](std::span<const std::size_t> chosen) -> std::optional<double> {
          drawn.clear();
          for (const std::size_t k : chosen)
            drawn.push_back(points[k]);
          return lineThrough(drawn).at(when);
        },
        resampling);
    if (interval) band.push_back({when, *interval});
  }
  return band;
}

}  // namespace ferrule
