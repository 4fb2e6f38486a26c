// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>

#include "app/report/chart.h"
#include "app/report/report_words.h"
#include "core/drills/drill_history.h"
#include "core/progress/player_progress.h"

/// Charts of the game: what measures of core/progress/game_measures.h, position_play.h and reliability.h come to, and
/// drills over their runs. Nothing where there is too little to draw.
namespace ferrule {

/// The rows of the game's chart, in their order.
enum class GameRow {
  BreakSuccess,
  BreakFouls,
  BreakBalls,
  BreakRest,
  Innings,
  InFrame,
  RunOuts,
  Fouls,
  Unforced,
  Time,
  TimeMade,
  TimeMissed,
};
/// Break, innings, fouls and time: bars for shares, words for the rest.
[[nodiscard]] std::optional<Chart> gameChart(const PlayerProgress& progress, const ReportWords& words);

/// Whether a safety left no direct shot, and what the next player did: the rows in this order.
enum class SafetyRow { NoDirect, Potted, Missed, Safety, Fouled };
[[nodiscard]] std::optional<Chart> safetyChart(const SafetyMeasure& safeties, const ReportWords& words);

/// The wrong side of the next ball, what it cost, and how long or short: the rows in this order.
enum class PositionRow { WrongSide, LossRight, LossWrong, Long };
[[nodiscard]] std::optional<Chart> positionChart(const PositionPlay& play, const ReportWords& words);

/// Choice against delivery in four boxes: row 0 good choices, row 1 poor; column 0 well struck, column 1 badly.
[[nodiscard]] std::optional<Chart> boxesChart(const ChoiceMeasure& choices, const ReportWords& words);

/// Stated chances across, what fell up; the key of a mark is its chanceBand.
[[nodiscard]] std::optional<Chart> reliabilityChart(const Reliability& reliability, const ReportWords& words);

/// One drill's runs of a history. key: which; empty: the drill with most tries that are known.
struct ChosenDrill {
  std::string key;
  QString name;
  DrillHistory history;
};
/// Nothing without a try of which anything is known; its chart: drill_charts.h.
[[nodiscard]] std::optional<ChosenDrill> chosenDrill(const PlayerHistory& history, const std::string& key);
}  // namespace ferrule
