// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions in a row: dots with whiskers, their counts below, a line through them with its band.
#include <algorithm>

#include "app/report/chart_content.h"
#include "app/report/chart_plot.h"

namespace ferrule {

namespace {

constexpr double kPlot_pt = 130.0;
constexpr double kAbove_pt = 5.0;
constexpr double kBelow_pt = 26.0;
/// Counts begin this far below the plane, dates a line lower.
constexpr double kCounts_pt = 2.0;
constexpr double kWordsLine_pt = 11.0;
constexpr double kDot_pt = 4.8;
/// Room between two counts.
constexpr double kBetween_pt = 5.0;

std::vector<ChartTick> countsWithRoom(const SeriesChart& chart, const ChartPlot& plot, const ChartStyle& style) {
  std::vector<ChartTick> counts;
  double taken = plot.plot().left() - 1e6;
  for (const ChartMark& mark : chart.marks) {
    const double half = wordsWidth(style, mark.below, kChartSmall_pt) / 2.0;
    const double middle = plot.at(mark.place, 0.0).x();
    if (middle - half < taken + kBetween_pt * style.unit) continue;
    counts.push_back({mark.place, mark.below});
    taken = middle + half;
  }
  return counts;
}

}  // namespace

double contentHeight(const SeriesChart&, double, const ChartStyle& style) {
  return (kAbove_pt + kPlot_pt + kBelow_pt) * style.unit;
}

std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const SeriesChart& chart,
                                   const ChartStyle& style) {
  const double unit = style.unit;
  const double least = chart.values.empty() ? 0.0 : chart.values.front().value;
  const double most = chart.values.empty() ? 1.0 : chart.values.back().value;
  double labels = 0.0;
  for (const ChartTick& tick : chart.values)
    labels = std::max(labels, wordsWidth(style, tick.words, kChartText_pt));
  // The last date stands under the last dot, half of it to the right.
  double right = 6.0 * unit;
  if (!chart.places.empty()) {
    const double half = wordsWidth(style, chart.places.back().words, kChartText_pt) / 2.0;
    right = std::max(right, half + 2.0 * unit - 0.035 * (area.width() - labels));
  }
  const double left = area.left() + labels + ChartPlot::besideLabels(style);
  const QRectF plane(left, area.top() + kAbove_pt * unit, area.right() - right - left, kPlot_pt * unit);
  ChartPlot plot(area, plane, style);
  const double first = chart.marks.empty() ? 0.0 : chart.marks.front().place;
  const double last = chart.marks.empty() ? 1.0 : chart.marks.back().place;
  const double margin = last > first ? 0.04 * (last - first) : 0.5;
  // A dot on the edge is whole.
  const double rim = (kDot_pt + 1.0) * unit / (plane.height() - 2.0 * (kDot_pt + 1.0) * unit) * (most - least);
  plot.setPlane(first - margin, last + margin, least - rim, most + rim);
  plot.setTicksLeft(chart.values, false);
  // An axis of Qt Charts would draw a line at each end of the rim too.
  for (const ChartTick& tick : chart.values)
    plot.addLine({{first - margin, tick.value}, {last + margin, tick.value}}, style.inks.line, 0.5);
  // An axis of Qt Charts cuts words that are close to each other to dots.
  const auto below = [&](const ChartTick& tick, double from_pt, double points) {
    const double middle = plot.at(tick.value, least).x();
    plot.addWords({middle - area.width(), plane.bottom() + from_pt * unit, 2.0 * area.width(), kWordsLine_pt * unit},
                  Qt::AlignHCenter, tick.words, points, style.inks.quiet);
  };
  for (const ChartTick& tick : countsWithRoom(chart, plot, style))
    below(tick, kCounts_pt, kChartSmall_pt);
  for (const ChartTick& tick : chart.places)
    below(tick, kCounts_pt + kWordsLine_pt, kChartText_pt);
  const auto within = [&](double value) { return std::clamp(value, least, most); };
  if (chart.trend && !chart.trend->band.empty()) {
    QList<QPointF> upper;
    QList<QPointF> lower;
    for (const ChartBand& one : chart.trend->band) {
      upper << QPointF(one.place, within(one.value.most));
      lower << QPointF(one.place, within(one.value.least));
    }
    plot.addBand(upper, lower, shadeOf(style.inks, 0.12));
  }
  if (chart.trend) {
    const ChartTrend& trend = *chart.trend;
    plot.addLine({{trend.firstPlace, within(trend.first)}, {trend.lastPlace, within(trend.last)}}, style.inks.text, 1.2,
                 trend.stands ? Qt::SolidLine : Qt::DashLine);
  }
  std::vector<ChartWhisker> whiskers;
  QList<QPointF> filled;
  QList<QPointF> hollow;
  std::vector<ChartSpot> spots;
  for (const ChartMark& mark : chart.marks) {
    const QPointF place(mark.place, within(mark.value));
    (mark.hollow ? hollow : filled) << place;
    if (mark.interval)
      whiskers.push_back({mark.place, place.y(), {within(mark.interval->least), within(mark.interval->most)}});
    const double x = plot.at(mark.place, least).x();
    spots.push_back({QRectF(x - 5.0 * unit, plane.top(), 10.0 * unit, plane.height()), mark.key, 0, mark.words});
  }
  plot.addWhiskers(whiskers, style.inks.accent, 1.0, kDot_pt);
  plot.addMarks(filled, kDot_pt, style.inks.accent, 1.2, style.inks.accent);
  plot.addMarks(hollow, kDot_pt, style.inks.accent, 1.2, style.inks.panel);
  plot.draw(painter);
  return spots;
}

}  // namespace ferrule
