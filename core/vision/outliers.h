// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

namespace ferrule {

/// The median absolute deviation of a normal law times this is its standard deviation.
inline constexpr double kDeviationFromMedian = 1.4826;

/// The upper median. values: at least one.
[[nodiscard]] inline double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

/// Leaves out what misses a fit by more than three standard deviations, as the median of the misses tells them, but
/// never what misses by less than least. misses: absolute, one for each item, at least one.
template <class Item>
[[nodiscard]] std::vector<Item> withoutOutliers(const std::vector<Item>& items, const std::vector<double>& misses,
                                                double least) {
  const double gate = std::max(3.0 * kDeviationFromMedian * median(misses), least);
  std::vector<Item> kept;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (misses[i] <= gate) kept.push_back(items[i]);
  }
  return kept;
}

}  // namespace ferrule
