// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/report/chart.h"
#include "app/report/report_words.h"

/// The charts of one player's period, for paper and for the window. Nothing where there is too little to draw.
namespace ferrule {

enum class SpreadUnit { Degrees, Percent };

/// A spread, session by session, with its finding's line.
[[nodiscard]] std::optional<Chart> spreadChart(const PlayerHistory& history, const ErrorMeasure& measure,
                                               const Finding& trend, SpreadUnit unit, const QString& title,
                                               const ReportWords& words);
/// Makes by cut and distance.
[[nodiscard]] std::optional<Chart> makeGridChart(const MakeGrid& grid, const QString& title, double tableWidth_m,
                                                 const ReportWords& words);
[[nodiscard]] std::optional<Chart> pocketChart(const Makes& makes, const ReportWords& words);
/// Corner pockets above, side pockets below, each from straight in to flat.
[[nodiscard]] std::optional<Chart> entryChart(const MakesByEntry& makes, const ReportWords& words);
[[nodiscard]] std::optional<Chart> missChart(const MissSides& misses, const ReportWords& words);
/// Made in practice and matches, before and after 40 minutes.
[[nodiscard]] std::optional<Chart> conditionChart(const PlayerProgress& progress, const ReportWords& words);

}  // namespace ferrule
