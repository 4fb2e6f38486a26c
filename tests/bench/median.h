// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <vector>

namespace ferrule::bench {

/// The upper middle one of some values; there is at least one.
[[nodiscard]] inline double median(std::vector<double> values) {
  std::ranges::sort(values);
  return values[values.size() / 2];
}

}  // namespace ferrule::bench
