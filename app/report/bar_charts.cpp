// SPDX-License-Identifier: GPL-3.0-or-later
// Lying bars: shares with their intervals, and counts to both sides of a middle line.
#include <algorithm>

#include "app/report/chart_content.h"
#include "app/report/chart_plot.h"

namespace ferrule {

namespace {

constexpr double kRow_pt = 17.0;
constexpr double kBar_pt = 9.0;
/// Where names and bars have no room beside each other, a name stands above its bar.
constexpr double kHighRow_pt = 33.0;
constexpr double kNameLine_pt = 10.0;
constexpr double kTicks_pt = 15.0;
constexpr double kHeads_pt = 12.0;
constexpr double kGap_pt = 8.0;
constexpr double kLeastPlot_pt = 70.0;
/// Half the height of a bracket at the end of an interval.
constexpr double kBracket_pt = 2.5;

/// How a bar chart parts its width, device pixels.
struct BarColumns {
  double names = 0.0;  ///< 0: above the bars
  double words = 0.0;
  double row_pt = kRow_pt;
};

BarColumns columnsOf(const BarChart& chart, double width, const ChartStyle& style) {
  BarColumns columns;
  double longest = 0.0;  // of words that stand where there is no bar
  for (const ChartBar& bar : chart.bars) {
    columns.names = std::max(columns.names, wordsWidth(style, bar.label, kChartText_pt));
    double& column = bar.value ? columns.words : longest;
    column = std::max(column, wordsWidth(style, bar.words, kChartText_pt));
  }
  const double gaps = 2.0 * kGap_pt * style.unit;
  const double least = std::max(kLeastPlot_pt * style.unit, longest - columns.words);
  if (columns.names + gaps + least + columns.words <= width) return columns;
  columns.names = 0.0;
  columns.row_pt = kHighRow_pt;
  return columns;
}

}  // namespace

double contentHeight(const BarChart& chart, double width, const ChartStyle& style) {
  const double rows = columnsOf(chart, width, style).row_pt * static_cast<double>(chart.bars.size());
  return (rows + kTicks_pt) * style.unit;
}

std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const BarChart& chart,
                                   const ChartStyle& style) {
  const double unit = style.unit;
  const BarColumns columns = columnsOf(chart, area.width(), style);
  const bool beside = columns.names > 0.0;
  const double count = static_cast<double>(chart.bars.size());
  // The first tick's words stand half to the left.
  const double firstTick = chart.values.empty() ? 0.0 : wordsWidth(style, chart.values.front().words, kChartText_pt);
  const double left = area.left() + std::max(beside ? columns.names + kGap_pt * unit : 0.0, firstTick / 2.0 + unit);
  const double lastTick = chart.values.empty() ? 0.0 : wordsWidth(style, chart.values.back().words, kChartText_pt);
  const double right = area.right() - std::max(columns.words + kGap_pt * unit, lastTick / 2.0 + unit);
  const double row = columns.row_pt * unit;
  const QRectF plane(left, area.top(), std::max(unit, right - left), row * count);
  ChartPlot plot(area, plane, style);
  plot.setPlane(0.0, 1.0, -0.5, count - 0.5);
  plot.setTicksBelow(chart.values, kChartText_pt, true);
  ChartPlot::Bars bars{{}, style.inks.accent, shadeOf(style.inks, 0.55)};
  for (const ChartBar& bar : chart.bars) {
    bars.values << std::clamp(bar.value.value_or(0.0), 0.0, 1.0);
  }
  plot.addBars({bars}, kBar_pt / columns.row_pt, 0.5);
  std::vector<ChartSpot> spots;
  for (std::size_t i = 0; i < chart.bars.size(); ++i) {
    const ChartBar& bar = chart.bars[i];
    const QRectF line(area.left(), area.top() + row * static_cast<double>(i), area.width(), row);
    spots.push_back({line, i, 0, bar.label + QStringLiteral(" \u00b7 ") + bar.words});
    const QRectF name = beside ? QRectF(line.left(), line.top(), columns.names, line.height())
                               : QRectF(line.left(), line.top(), line.width(), kNameLine_pt * unit);
    plot.addWords(name, beside ? Qt::AlignRight : Qt::AlignLeft, bar.label, kChartText_pt, style.inks.text);
    if (bar.interval) {
      const double y = count - 1.0 - static_cast<double>(i);
      const double half = kBracket_pt / columns.row_pt;
      const double least = std::clamp(bar.interval->least, 0.0, 1.0);
      const double most = std::clamp(bar.interval->most, 0.0, 1.0);
      plot.addLine({{least, y - half}, {least, y + half}, {least, y}, {most, y}, {most, y + half}, {most, y - half}},
                   style.inks.text, 1.0);
    }
    if (bar.value) {
      plot.addWords({plane.right() + kGap_pt * unit, line.top(), columns.words, line.height()}, Qt::AlignLeft,
                    bar.words, kChartText_pt, style.inks.text);
    } else {
      plot.addWords({plane.left() + 2.0 * unit, line.top(), plane.width(), line.height()}, Qt::AlignLeft, bar.words,
                    kChartText_pt, style.inks.text, true);
    }
  }
  plot.draw(painter);
  return spots;
}

namespace {

BarColumns columnsOf(const SplitChart& chart, double width, const ChartStyle& style) {
  BarColumns columns;
  double counts = 0.0;
  for (const SplitRow& row : chart.rows) {
    columns.names = std::max(columns.names, wordsWidth(style, row.label, kChartText_pt));
    columns.words = std::max(columns.words, wordsWidth(style, row.words, kChartText_pt));
    for (const int one : {row.left, row.right})
      counts = std::max(counts, wordsWidth(style, QString::number(one), kChartText_pt));
  }
  const double least = kLeastPlot_pt * style.unit + 2.0 * counts;
  if (columns.names + 2.0 * kGap_pt * style.unit + least + columns.words <= width) return columns;
  columns.names = 0.0;
  columns.row_pt = kHighRow_pt;
  return columns;
}

}  // namespace

double contentHeight(const SplitChart& chart, double width, const ChartStyle& style) {
  const double rows = columnsOf(chart, width, style).row_pt * static_cast<double>(chart.rows.size());
  return (kHeads_pt + rows) * style.unit;
}

std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const SplitChart& chart,
                                   const ChartStyle& style) {
  const double unit = style.unit;
  const BarColumns columns = columnsOf(chart, area.width(), style);
  const bool beside = columns.names > 0.0;
  const double words = columns.words;
  const double high = columns.row_pt * unit;
  double counts = 0.0;
  int most = 1;
  for (const SplitRow& row : chart.rows) {
    most = std::max({most, row.left, row.right});
    for (const int one : {row.left, row.right})
      counts = std::max(counts, wordsWidth(style, QString::number(one), kChartText_pt));
  }
  counts += 5.0 * unit;
  const double left = area.left() + (beside ? columns.names + kGap_pt * unit : 0.0);
  const double right = area.right() - words - kGap_pt * unit;
  const double rows = static_cast<double>(chart.rows.size());
  const QRectF plane(left, area.top() + kHeads_pt * unit, std::max(2.0 * counts + unit, right - left), high * rows);
  ChartPlot plot(area, plane, style);
  // Beside the longest bar its count has room.
  const double half = most * plane.width() / std::max(unit, plane.width() - 2.0 * counts);
  plot.setPlane(-half, half, -0.5, rows - 0.5);
  ChartPlot::Bars lefts{{}, style.inks.accent, shadeOf(style.inks, 0.8)};
  ChartPlot::Bars rights{{}, style.inks.accent, style.inks.panel};  // the other side is hollow
  for (const SplitRow& row : chart.rows) {
    lefts.values << -row.left;
    rights.values << row.right;
  }
  plot.addBars({lefts, rights}, kBar_pt / columns.row_pt, 0.8);
  // Names above the bars leave the middle line out.
  const double nameShare = beside ? 0.0 : kNameLine_pt / columns.row_pt;
  for (double row = 0.0; row < rows; ++row)
    plot.addLine({{0.0, row - 0.5}, {0.0, row + 0.5 - nameShare}}, style.inks.text, 1.0);
  const double middle = plot.at(0.0, 0.0).x();
  const QRectF head(left, area.top(), plane.width(), kHeads_pt * unit);
  plot.addWords({head.left(), head.top(), middle - head.left() - 4.0 * unit, head.height()}, Qt::AlignRight,
                chart.leftWords, kChartText_pt, style.inks.quiet);
  plot.addWords({middle + 4.0 * unit, head.top(), head.right() - middle, head.height()}, Qt::AlignLeft,
                chart.rightWords, kChartText_pt, style.inks.quiet);
  std::vector<ChartSpot> spots;
  for (std::size_t i = 0; i < chart.rows.size(); ++i) {
    const SplitRow& row = chart.rows[i];
    const double top = plane.top() + high * static_cast<double>(i);
    const QString told = QStringLiteral("%1 \u00b7 %2: %3");
    spots.push_back({QRectF(left, top, middle - left, high), row.key, 0,
                     told.arg(row.label, chart.leftWords, QString::number(row.left))});
    spots.push_back({QRectF(middle, top, plane.right() - middle, high), row.key, 1,
                     told.arg(row.label, chart.rightWords, QString::number(row.right))});
    const QRectF name = beside ? QRectF(area.left(), top, columns.names, high)
                               : QRectF(area.left(), top, area.width(), kNameLine_pt * unit);
    plot.addWords(name, beside ? Qt::AlignRight : Qt::AlignLeft, row.label, kChartText_pt, style.inks.text, !beside);
    const double thick = plot.at(-row.left, 0.0).x() - 2.0 * unit;
    const double thin = plot.at(row.right, 0.0).x() + 2.0 * unit;
    plot.addWords({left, top, thick - left, high}, Qt::AlignRight, QString::number(row.left), kChartText_pt,
                  style.inks.text);
    plot.addWords({thin, top, counts, high}, Qt::AlignLeft, QString::number(row.right), kChartText_pt, style.inks.text);
    plot.addWords({plane.right() + kGap_pt * unit, top, words, high}, Qt::AlignLeft, row.words, kChartText_pt,
                  style.inks.quiet);
  }
  plot.draw(painter);
  return spots;
}

}  // namespace ferrule
