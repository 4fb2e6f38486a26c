// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>

namespace ferrule {

/// The band that holds a value, from 0: the first whose upper end lies above it, or one more than there are ends.
template <class Ends>
[[nodiscard]] std::size_t bandOf(const Ends& upperEnds, double value) {
  const auto found = std::ranges::find_if(upperEnds, [value](double end) { return value < end; });
  return static_cast<std::size_t>(found - upperEnds.begin());
}

/// The same where nothing lies beyond the last end, which belongs to its band.
template <class Ends>
[[nodiscard]] std::size_t closedBandOf(const Ends& upperEnds, double value) {
  return std::min(bandOf(upperEnds, value), upperEnds.size() - 1);
}

}  // namespace ferrule
