// SPDX-License-Identifier: GPL-3.0-or-later
// Cells of rows and columns, for which Qt Charts has no form.
#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>
#include <algorithm>

#include "app/report/chart_content.h"

namespace ferrule {

namespace {

constexpr double kCell_pt = 30.0;
/// Where columns are narrow, interval and count of a cell stand on lines of their own.
constexpr double kHighCell_pt = 40.0;
constexpr double kHeads_pt = 14.0;

double rowWordsWidth(const GridChart& chart, const ChartStyle& style) {
  double words = 0.0;
  for (const QString& row : chart.rows)
    words = std::max(words, wordsWidth(style, row, kChartText_pt));
  return words;
}

double columnWidth(const GridChart& chart, double width, const ChartStyle& style) {
  const double columns = std::max<double>(1.0, static_cast<double>(chart.columns.size()));
  return (width - rowWordsWidth(chart, style) - 6.0 * style.unit) / columns;
}

double cellPoints(const GridChart& chart, double width, const ChartStyle& style) {
  const double across = columnWidth(chart, width, style) - 6.0 * style.unit;
  for (const auto& row : chart.cells) {
    for (const GridCell& cell : row) {
      if (wordsWidth(style, cell.small, kChartSmall_pt) > across) return kHighCell_pt;
    }
  }
  return kCell_pt;
}

}  // namespace

double contentHeight(const GridChart& chart, double width, const ChartStyle& style) {
  return (cellPoints(chart, width, style) * static_cast<double>(chart.rows.size()) + kHeads_pt) * style.unit;
}

std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const GridChart& chart,
                                   const ChartStyle& style) {
  const double unit = style.unit;
  const Inks& inks = style.inks;
  const auto text = [&](const QRectF& box, int flags, const QString& words, double points, const QColor& colour,
                        bool bold = false) {
    painter.setFont(sizedFont(style, points, bold));
    painter.setPen(colour);
    painter.drawText(box, flags | Qt::TextDontClip, words);
  };
  const double words = rowWordsWidth(chart, style);
  const double high = cellPoints(chart, area.width(), style);
  const double left = area.left() + words + 6.0 * unit;
  const double across = columnWidth(chart, area.width(), style);
  std::vector<ChartSpot> spots;
  double top = area.top();
  for (std::size_t r = 0; r < chart.rows.size(); ++r) {
    text(QRectF(area.left(), top, words, high * unit), Qt::AlignRight | Qt::AlignVCenter, chart.rows[r], kChartText_pt,
         inks.text);
    for (std::size_t c = 0; c < chart.columns.size(); ++c) {
      const GridCell& cell = chart.cells[r][c];
      const QRectF box(left + static_cast<double>(c) * across + unit, top + unit, across - 2.0 * unit,
                       (high - 2.0) * unit);
      painter.setPen(QPen(inks.line, 0.5 * unit));
      painter.setBrush(cell.shade ? QBrush(shadeOf(inks, *cell.shade)) : QBrush(Qt::NoBrush));
      painter.drawRect(box);
      spots.push_back(
          {box, r < chart.rowKeys.size() ? chart.rowKeys[r] : r, c,
           QStringList{chart.columns[c], chart.rows[r], cell.words, cell.small}.join(QStringLiteral(" \u00b7 "))});
      const QColor ink = cell.shade ? inks.text : inks.quiet;
      if (cell.small.isEmpty()) {
        text(box, Qt::AlignCenter, cell.words, kChartSmall_pt, ink);
        continue;
      }
      text(QRectF(box.left(), box.top() + 3.0 * unit, box.width(), 12.0 * unit), Qt::AlignCenter, cell.words,
           kChartText_pt + 1.0, ink, true);
      QString small = cell.small;
      if (high > kCell_pt) small.replace(QStringLiteral(" \u00b7 "), QStringLiteral("\n"));
      text(QRectF(box.left(), box.top() + 15.0 * unit, box.width(), (high - 20.0) * unit), Qt::AlignCenter, small,
           kChartSmall_pt, ink);
    }
    top += high * unit;
  }
  for (std::size_t c = 0; c < chart.columns.size(); ++c) {
    text(QRectF(left + static_cast<double>(c) * across, top + 2.0 * unit, across, 10.0 * unit), Qt::AlignCenter,
         chart.columns[c], kChartText_pt, inks.text);
  }
  return spots;
}

}  // namespace ferrule
