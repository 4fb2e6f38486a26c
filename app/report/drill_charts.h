// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/report/chart.h"
#include "app/words/numbers.h"
#include "core/drills/drill_history.h"

namespace ferrule {

/// Run by run with Wilson's interval and count; hollow where there are too few tries. The key of a mark is
/// its run's place. Nothing without a run.
[[nodiscard]] std::optional<Chart> historyChart(const DrillHistory& history, const QString& title,
                                                const Numbers& numbers);
/// Day and time of a run as the locale writes it.
[[nodiscard]] QString runDate(std::int64_t started_ms, const Numbers& numbers);

}  // namespace ferrule
