// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_painter.h"

#include <QPainter>

#include "app/report/chart_caption.h"
#include "app/report/chart_content.h"

namespace ferrule {

namespace {

ChartCaption captionOf(const Chart& chart, double width, const ChartStyle& style) {
  return std::visit([&](const auto& one) { return ChartCaption(one.title, one.note, one.below, width, style); }, chart);
}

}  // namespace

double chartHeight(const Chart& chart, double width, const ChartStyle& style) {
  const ChartCaption caption = captionOf(chart, width, style);
  const double content = std::visit([&](const auto& one) { return contentHeight(one, width, style); }, chart);
  return caption.above() + content + caption.belowHeight();
}

std::vector<ChartSpot> drawChart(QPainter& painter, const QRectF& area, const Chart& chart, const ChartStyle& style) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const ChartCaption caption = captionOf(chart, area.width(), style);
  caption.draw(painter, area);
  const QRectF content = area.adjusted(0.0, caption.above(), 0.0, -caption.belowHeight());
  auto spots = std::visit([&](const auto& one) { return drawContent(painter, content, one, style); }, chart);
  painter.restore();
  return spots;
}

}  // namespace ferrule
