// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "app/report/chart.h"
#include "app/report/report_words.h"
#include "core/progress/asked.h"

/// Charts of single shots, for paper and for the window. Nothing where there is too little to draw. Of many shots the
/// last kMostPoints are drawn; ellipses and counts are of all.
namespace ferrule {

inline constexpr std::size_t kMostPoints = 1500;

/// Error of the aim across, error of the speed up, against what was asked.
[[nodiscard]] std::optional<Chart> targetChart(const PlayerHistory& history, std::span<const Asked> asked,
                                               const ReportWords& words);
/// Where the tip met the ball, as seen along the cue, with the miscue limit.
[[nodiscard]] std::optional<Chart> tipChart(const PlayerHistory& history, const ReportWords& words);
/// Speed that was asked across, speed that came out up.
[[nodiscard]] std::optional<Chart> speedAskedChart(const PlayerHistory& history, std::span<const Asked> asked,
                                                   const ReportWords& words);
/// Where the cue ball came to rest, from where it was asked to, along and across the table.
[[nodiscard]] std::optional<Chart> restChart(const PlayerHistory& history, std::span<const Asked> asked,
                                             const ReportWords& words);
/// Where the balls lay that were missed too thick and too thin, with the counts at the pockets they were meant for.
[[nodiscard]] std::optional<Chart> missMapChart(const PlayerHistory& history, const ReportWords& words);

/// How many shots each of these rests on, for the sentence where there are too few; they need kFewestForSpread, the map
/// kFewestForShare.
[[nodiscard]] int targetCount(const PlayerHistory& history, std::span<const Asked> asked);
[[nodiscard]] int tipCount(const PlayerHistory& history);
[[nodiscard]] int speedAskedCount(const PlayerHistory& history, std::span<const Asked> asked);
[[nodiscard]] int restCount(const PlayerHistory& history, std::span<const Asked> asked);
[[nodiscard]] int missMapCount(const PlayerHistory& history);

}  // namespace ferrule
