// SPDX-License-Identifier: GPL-3.0-or-later
// Shots on the one picture of the table.
#include <QPainter>
#include <algorithm>

#include "app/picture/table_painter.h"
#include "app/report/chart_content.h"

namespace ferrule {

namespace {

constexpr double kTable_pt = 180.0;
constexpr double kWordsLine_pt = 12.0;
constexpr double kDot_pt = 2.0;
constexpr double kReach_pt = 4.0;

double tableHeight(const MapChart& chart, double width, const ChartStyle& style) {
  const QSizeF outer = PlanMapping::outerSize_m(chart.table, false);
  return std::min(kTable_pt * style.unit, width * outer.height() / outer.width());
}

}  // namespace

double contentHeight(const MapChart& chart, double width, const ChartStyle& style) {
  return tableHeight(chart, width, style) + 2.0 * kWordsLine_pt * style.unit;
}

std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const MapChart& chart,
                                   const ChartStyle& style) {
  const double unit = style.unit;
  const QRectF middle = area.adjusted(0.0, kWordsLine_pt * unit, 0.0, -kWordsLine_pt * unit);
  // In points, so that its hairlines are as wide on paper as on a screen.
  painter.save();
  painter.translate(middle.topLeft());
  painter.scale(unit, unit);
  const PlanMapping mapping(chart.table, {QPointF(), middle.size() / unit}, false);
  paintTable(painter, chart.table, mapping, style.inks);
  std::vector<ChartSpot> spots;
  const auto onDevice = [&](QPointF point) { return middle.topLeft() + unit * point; };
  for (const ChartPoint& point : chart.points) {
    const QPointF place = mapping.screenFromTable({point.x, point.y});
    const bool hollow = point.kind == PointKind::Hollow;
    painter.setPen(QPen(hollow ? style.inks.casing : style.inks.sight, hollow ? 0.9 : 0.5));
    painter.setBrush(hollow ? style.inks.sight : style.inks.casing);
    painter.drawEllipse(place, kDot_pt, kDot_pt);
    const QPointF at = onDevice(place);
    spots.push_back(
        {QRectF(at.x() - kReach_pt * unit, at.y() - kReach_pt * unit, 2.0 * kReach_pt * unit, 2.0 * kReach_pt * unit),
         point.key, 0, point.words});
  }
  const QRectF outline = mapping.outline(chart.table);
  painter.restore();
  painter.setFont(sizedFont(style, kChartSmall_pt));
  painter.setPen(style.inks.text);
  for (const ChartLabel& label : chart.labels) {
    const double half = wordsWidth(style, label.words, kChartSmall_pt) / 2.0;
    const double x = std::clamp(onDevice(mapping.screenFromTable({label.x, 0.0})).x(), area.left() + half,
                                std::max(area.left() + half, area.right() - half));
    const double edge = onDevice(label.y > 0.0 ? outline.topLeft() : outline.bottomLeft()).y();
    const double top = label.y > 0.0 ? edge - kWordsLine_pt * unit : edge;
    painter.drawText(QRectF(x - half, top, 2.0 * half, kWordsLine_pt * unit), Qt::AlignCenter | Qt::TextDontClip,
                     label.words);
  }
  return spots;
}

}  // namespace ferrule
