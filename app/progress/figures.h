// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "app/report/chart.h"
#include "app/report/report_words.h"
#include "core/progress/player_progress.h"

/// The figures of the Progress place, and the shots behind every part of one.
namespace ferrule {

enum class FigureKind {
  AimTrend,
  SpeedTrend,
  MakesByCueBall,
  MakesByObjectBall,
  Pockets,
  Entries,
  MissSides,
  MissMap,
  Target,
  TipPoint,
  SpeedAsked,
  Rest,
  Conditions,
  Boxes,
  NextBall,
  Reliability,
  Game,
  Safeties,
  Drill,
};

struct Figure {
  FigureKind kind = FigureKind::AimTrend;
  QString title;
  std::optional<Chart> chart;
  QString otherwise;  ///< why there is no chart; empty where there is one
};

/// All of them, in the order of the place. drill: the key of the drill that is shown; empty: the one with most tries.
[[nodiscard]] std::vector<Figure> figuresOf(const PlayerProgress& progress, const ReportWords& words,
                                            const std::string& drill = {});

/// Places in progress.history's shots of what a spot of the figure's chart shows.
[[nodiscard]] std::vector<std::size_t> shotsBehind(const PlayerProgress& progress, FigureKind kind,
                                                   const ChartSpot& spot);

}  // namespace ferrule
