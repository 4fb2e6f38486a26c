// SPDX-License-Identifier: GPL-3.0-or-later
// Single shots in a plane, with outlines and the ellipse of their scatter.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/report/chart_content.h"
#include "app/report/chart_plot.h"

namespace ferrule {

namespace {

constexpr double kPlane_pt = 190.0;
constexpr double kAbove_pt = 5.0;
constexpr double kUpWords_pt = 12.0;
constexpr double kTicks_pt = 14.0;
constexpr double kAcrossWords_pt = 12.0;
/// Of the plane beyond the outermost ticks, so that the words of both axes do not meet in the corner.
constexpr double kBeyondTicks = 0.035;
constexpr double kDot_pt = 3.4;
constexpr double kReach_pt = 4.0;

QList<QPointF> around(const ChartEllipse& ellipse) {
  QList<QPointF> way;
  for (int i = 0; i <= 72; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / 72;
    const double along = ellipse.longHalf * std::cos(angle);
    const double across = ellipse.shortHalf * std::sin(angle);
    way << QPointF(ellipse.x + along * std::cos(ellipse.turn_rad) - across * std::sin(ellipse.turn_rad),
                   ellipse.y + along * std::sin(ellipse.turn_rad) + across * std::cos(ellipse.turn_rad));
  }
  return way;
}

double above(const PointChart& chart) {
  return kAbove_pt + (chart.upWords.isEmpty() ? 0.0 : kUpWords_pt);
}
double under(const PointChart& chart) {
  return (chart.across.empty() ? 4.0 : kTicks_pt) + (chart.acrossWords.isEmpty() ? 0.0 : kAcrossWords_pt);
}

/// What the plane shows, in the units of its axes; y upwards.
QRectF shownOf(const PointChart& chart) {
  const QRectF ticks(chart.left, chart.bottom, chart.right - chart.left, chart.top - chart.bottom);
  if (chart.across.empty()) return ticks;
  const double x = kBeyondTicks * ticks.width();
  const double y = kBeyondTicks * ticks.height();
  return ticks.adjusted(-x, -y, x, y);
}

/// The plane within an area, device pixels.
QRectF planeOf(const PointChart& chart, const QRectF& area, const ChartStyle& style) {
  const double unit = style.unit;
  double labels = 0.0;
  for (const ChartTick& tick : chart.up)
    labels = std::max(labels, wordsWidth(style, tick.words, kChartText_pt));
  const double last = chart.across.empty() ? 0.0 : wordsWidth(style, chart.across.back().words, kChartText_pt);
  const double left = area.left() + labels + (labels > 0.0 ? ChartPlot::besideLabels(style) : 4.0 * unit);
  const double right = area.right() - std::max(4.0 * unit, last / 2.0 + unit);
  QRectF plane(left, area.top() + above(chart) * unit, right - left, kPlane_pt * unit);
  if (!chart.equal) return plane;
  const QSizeF shown = shownOf(chart).size();
  const double scale = std::min(plane.width() / shown.width(), plane.height() / shown.height());
  const QPointF middle = plane.center();
  plane.setSize(scale * shown);
  plane.moveCenter(middle);
  return plane;
}

}  // namespace

double contentHeight(const PointChart& chart, double, const ChartStyle& style) {
  return (above(chart) + kPlane_pt + under(chart)) * style.unit;
}

std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const PointChart& chart,
                                   const ChartStyle& style) {
  const double unit = style.unit;
  const QRectF plane = planeOf(chart, area, style);
  ChartPlot plot(area, plane, style);
  const QRectF shown = shownOf(chart);
  plot.setPlane(shown.left(), shown.right(), shown.top(), shown.bottom());
  plot.setTicksLeft(chart.up, true);
  plot.setTicksBelow(chart.across, kChartText_pt, true);
  plot.addWords({area.left(), area.top(), area.width(), kUpWords_pt * unit}, Qt::AlignLeft, chart.upWords,
                kChartText_pt, style.inks.quiet);
  plot.addWords({plane.left(), plane.bottom() + kTicks_pt * unit, plane.width(), kAcrossWords_pt * unit},
                Qt::AlignHCenter, chart.acrossWords, kChartText_pt, style.inks.quiet);
  // Where nothing is wrong.
  for (const ChartTick& tick : chart.across) {
    if (tick.value == 0.0 && chart.left < 0.0)
      plot.addLine({{0.0, shown.top()}, {0.0, shown.bottom()}}, style.inks.line, 1.2);
  }
  for (const ChartTick& tick : chart.up) {
    if (tick.value == 0.0 && chart.bottom < 0.0)
      plot.addLine({{shown.left(), 0.0}, {shown.right(), 0.0}}, style.inks.line, 1.2);
  }
  for (const ChartOutline& outline : chart.outlines) {
    QList<QPointF> way;
    for (const auto& [x, y] : outline.points)
      way << QPointF(x, y);
    plot.addLine(way, style.inks.quiet, 0.8, outline.dashed ? Qt::DashLine : Qt::SolidLine);
  }
  QList<QPointF> filled;
  QList<QPointF> hollow;
  std::vector<ChartSpot> spots;
  for (const ChartPoint& point : chart.points) {
    const QPointF place = plot.at(point.x, point.y);
    if (!plane.contains(place)) continue;
    (point.kind == PointKind::Hollow ? hollow : filled) << QPointF(point.x, point.y);
    spots.push_back({QRectF(place.x() - kReach_pt * unit, place.y() - kReach_pt * unit, 2.0 * kReach_pt * unit,
                            2.0 * kReach_pt * unit),
                     point.key, 0, point.words});
  }
  plot.addMarks(filled, kDot_pt, style.inks.accent, 0.8, style.inks.accent);
  plot.addMarks(hollow, kDot_pt, style.inks.accent, 0.8, style.inks.panel);
  if (chart.ellipse) plot.addLine(around(*chart.ellipse), style.inks.text, 1.2);
  plot.draw(painter);
  return spots;
}

}  // namespace ferrule
