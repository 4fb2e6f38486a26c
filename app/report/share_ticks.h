// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "app/report/chart.h"
#include "app/report/report_words.h"

namespace ferrule {

/// The axis of a share: none, a quarter, half, three quarters, all.
[[nodiscard]] inline std::vector<ChartTick> shareTicks(const ReportWords& words) {
  std::vector<ChartTick> ticks;
  for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0})
    ticks.push_back({share, words.percent(share)});
  return ticks;
}

}  // namespace ferrule
