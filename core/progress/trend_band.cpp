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
  const auto whenOf = [&](std::size_t i) { return first + (last - first) * static_cast<double>(i) / (count - 1); };
  std::vector<SeriesPoint> drawn;
  const auto intervals = sessionIntervals(
      points.size(), static_cast<std::size_t>(count),
      [&](std::span<const DrawnSession> chosen, std::span<double> values) {
        drawn.clear();
        for (const DrawnSession k : chosen)
          drawn.push_back(points[k]);
        const Line line = lineThrough(drawn);
        for (std::size_t i = 0; i < values.size(); ++i)
          values[i] = line.at(whenOf(i));
        return true;
      },
      resampling);
  for (std::size_t i = 0; i < intervals.size(); ++i)
    band.push_back({whenOf(i), intervals[i]});
  return band;
}

}  // namespace ferrule
