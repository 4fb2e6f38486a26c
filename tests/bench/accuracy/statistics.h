// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace ferrule::bench {

/// Root mean square; 0 of nothing.
[[nodiscard]] double rms(const std::vector<double>& values);
/// The value that a share (0 to 1) of the values does not exceed; 0 of nothing.
[[nodiscard]] double quantile(std::vector<double> values, double share);

/// How many of how many.
struct Tally {
  long hits = 0;
  long all = 0;

  void add(bool hit) {
    ++all;
    hits += hit ? 1 : 0;
  }
  void add(const Tally& other) {
    hits += other.hits;
    all += other.all;
  }
  [[nodiscard]] double percent() const {
    return all == 0 ? 0.0 : 100.0 * static_cast<double>(hits) / static_cast<double>(all);
  }
};

}  // namespace ferrule::bench
