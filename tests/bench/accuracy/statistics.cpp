// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/accuracy/statistics.h"

#include <algorithm>
#include <cmath>

namespace ferrule::bench {

double rms(const std::vector<double>& values) {
  if (values.empty()) return 0.0;
  double sum = 0.0;
  for (const double value : values)
    sum += value * value;
  return std::sqrt(sum / static_cast<double>(values.size()));
}

double quantile(std::vector<double> values, double share) {
  if (values.empty()) return 0.0;
  const auto last = static_cast<double>(values.size() - 1);
  const auto index = static_cast<std::ptrdiff_t>(std::ceil(share * last));
  std::nth_element(values.begin(), values.begin() + index, values.end());
  return values[static_cast<std::size_t>(index)];
}

}  // namespace ferrule::bench
