// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <ctime>

namespace ferrule::bench {

/// Time that this thread has spent on a core, s; other programs do not count.
[[nodiscard]] inline double processorTime_s() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) + 1e-9 * static_cast<double>(now.tv_nsec);
}

}  // namespace ferrule::bench
