// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <variant>
#include <vector>

#include "core/progress/interval.h"

/// Charts as values: every word and number is already in them, so that paper, HTML and screen show the same.
namespace ferrule {

/// A line of the grid with its words.
struct ChartTick {
  double value = 0.0;
  QString words;
};

/// A dot with its whisker. hollow tells a second kind apart without colour.
struct ChartMark {
  double place = 0.0;  ///< along the axis below, any unit
  double value = 0.0;
  std::optional<Interval> interval;
  QString below;  ///< its count, under the axis
  bool hollow = false;
};

/// A straight line through the marks with the band of what it may be.
struct ChartTrend {
  double firstPlace = 0.0;
  double lastPlace = 0.0;
  double first = 0.0;
  double last = 0.0;
  bool stands = false;  ///< solid; else dashed: no more than chance
};

/// Sessions in a row.
struct SeriesChart {
  QString title;
  QString note;  ///< right of the title
  std::vector<ChartMark> marks;
  std::vector<ChartTick> values;  ///< up the left side, ascending
  std::vector<ChartTick> places;  ///< along the bottom
  std::optional<ChartTrend> trend;
  QString below;  ///< what the counts and places are
};

struct GridCell {
  QString words;                ///< large
  QString small;                ///< interval and count
  std::optional<double> shade;  ///< 0 to 1; nothing: an empty cell
};

/// Cells of rows and columns.
struct GridChart {
  QString title;
  QString note;
  std::vector<QString> columns;
  std::vector<QString> rows;
  std::vector<std::vector<GridCell>> cells;  ///< [row][column]
  QString below;
};

struct ChartBar {
  QString label;
  std::optional<double> value;  ///< 0 to 1; nothing: only the words
  std::optional<Interval> interval;
  QString words;  ///< right of the bar
};

/// Lying bars from 0 to 1.
struct BarChart {
  QString title;
  QString note;
  std::vector<ChartBar> bars;
  std::vector<ChartTick> values;
  QString below;
};

struct SplitRow {
  QString label;
  int left = 0;
  int right = 0;
  QString words;  ///< the interval of the left share, or that there is not enough
};

/// Counts to the left and right of a middle line: thick and thin.
struct SplitChart {
  QString title;
  QString note;
  QString leftWords;
  QString rightWords;
  std::vector<SplitRow> rows;
  QString below;
};

using Chart = std::variant<SeriesChart, GridChart, BarChart, SplitChart>;

/// A round step for a scale from 0 or least to most with about count lines.
[[nodiscard]] double roundStep(double span, int count);

}  // namespace ferrule
