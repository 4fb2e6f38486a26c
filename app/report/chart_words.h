// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/report/chart.h"

namespace ferrule {

/// A chart for somebody who does not see it: title, what it shows part by part, and the words under it. Of single shots
/// how many there are and what the axes are; their numbers lie in the chart's CSV.
[[nodiscard]] QString spokenChart(const Chart& chart);

}  // namespace ferrule
