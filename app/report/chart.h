// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <cstddef>
#include <optional>
#include <utility>
#include <variant>
#include <vector>

#include "core/progress/interval.h"
#include "core/table/table.h"

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
  QString words{};      ///< date, value and interval, for whoever points at it
  std::size_t key = 0;  ///< which of the measure's rows it shows
};

/// Where a line may lie at one place.
struct ChartBand {
  double place = 0.0;
  Interval value;
};

/// A straight line through the marks with the band of what it may be.
struct ChartTrend {
  double firstPlace = 0.0;
  double lastPlace = 0.0;
  double first = 0.0;
  double last = 0.0;
  bool stands = false;            ///< solid; else dashed: no more than chance
  std::vector<ChartBand> band{};  ///< where the line may lie, along the places; may be empty
};

/// Sessions in a row.
struct SeriesChart {
  QString title;
  QString note;                                 ///< right of the title
  QString valueName = QStringLiteral("value");  ///< in files, with its unit: "scatter_deg"
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
  std::vector<std::size_t> rowKeys{};        ///< which of the measure's rows each row shows
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
  QString words;        ///< the interval of the left share, or that there is not enough
  std::size_t key = 0;  ///< which of the measure's rows it shows
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

enum class PointKind { Filled, Hollow };

/// One shot.
struct ChartPoint {
  double x = 0.0;
  double y = 0.0;
  PointKind kind = PointKind::Filled;
  QString words;        ///< for whoever points at it
  std::size_t key = 0;  ///< the shot's place in its history
};

/// A line or an outline of the plane itself: the ball's edge, the miscue limit, where asked and delivered agree.
struct ChartOutline {
  std::vector<std::pair<double, double>> points;
  bool dashed = false;
};

/// Words at a place.
struct ChartLabel {
  double x = 0.0;
  double y = 0.0;
  QString words;
};

/// An ellipse that holds 95 of 100 points if they follow a normal law.
struct ChartEllipse {
  double x = 0.0;
  double y = 0.0;
  double longHalf = 0.0;
  double shortHalf = 0.0;
  double turn_rad = 0.0;
};

/// Single shots in a plane.
struct PointChart {
  QString title;
  QString note;
  std::vector<ChartTick> across;  ///< along the bottom, ascending, at least two where there is an axis
  std::vector<ChartTick> up;
  QString acrossName = QStringLiteral("x");  ///< in files, with its unit: "asked_m_s"
  QString upName = QStringLiteral("y");
  QString acrossWords;  ///< what is across, under the ticks
  QString upWords;      ///< what is up, above the ticks
  double left = 0.0;    ///< of the plane
  double right = 1.0;
  double bottom = 0.0;
  double top = 1.0;
  bool equal = false;  ///< one unit is as long across as up
  std::vector<ChartOutline> outlines;
  std::vector<ChartPoint> points;
  std::optional<ChartEllipse> ellipse;
  QString below;
};

/// Single shots on a picture of the table.
struct MapChart {
  QString title;
  QString note;
  Table table;
  std::vector<ChartPoint> points;  ///< m, in the table's axes
  std::vector<ChartLabel> labels;  ///< m; beyond the long rails, above or below the picture
  QString below;
};

using Chart = std::variant<SeriesChart, GridChart, BarChart, SplitChart, PointChart, MapChart>;

/// One mark, cell, bar, side or point of a chart, where it was drawn.
struct ChartSpot {
  QRectF area;
  std::size_t key = 0;     ///< which of the measure's rows, or the shot's place in its history
  std::size_t column = 0;  ///< of a grid; 0 left and 1 right of a split chart
  QString words;           ///< what it shows, with interval and count
};

[[nodiscard]] const QString& titleOf(const Chart& chart);

/// A round step for a scale from 0 or least to most with about count lines.
[[nodiscard]] double roundStep(double span, int count);

}  // namespace ferrule
