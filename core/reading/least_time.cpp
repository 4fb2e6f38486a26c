// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/least_time.h"

#include <algorithm>
#include <limits>

namespace ferrule {

double leastTime_s(double low_s, double high_s, const std::function<double(double)>& cost) {
  constexpr int kFirstSteps = 48;
  constexpr int kSteps = 10;
  constexpr int kZooms = 5;
  double best_s = low_s;
  double least = std::numeric_limits<double>::infinity();
  double from_s = low_s;
  double to_s = high_s;
  int steps = kFirstSteps;
  for (int zoom = 0; zoom <= kZooms; ++zoom) {
    for (int i = 0; i <= steps; ++i) {
      const double time_s = from_s + (to_s - from_s) * i / steps;
      const double here = cost(time_s);
      if (here < least) {
        least = here;
        best_s = time_s;
      }
    }
    const double step_s = (to_s - from_s) / steps;
    from_s = std::max(low_s, best_s - step_s);
    to_s = std::min(high_s, best_s + step_s);
    steps = kSteps;
  }
  return best_s;
}

}  // namespace ferrule
