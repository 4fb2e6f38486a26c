// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <vector>

#include "app/report/chart.h"
#include "app/report/chart_style.h"

class QPainter;

/// The kinds of charts, each between its caption: how high it is at a width, device pixels, and how it is drawn within
/// a rectangle of that size. chart_painter.h puts them together.
namespace ferrule {

[[nodiscard]] double contentHeight(const SeriesChart& chart, double width, const ChartStyle& style);
[[nodiscard]] double contentHeight(const GridChart& chart, double width, const ChartStyle& style);
[[nodiscard]] double contentHeight(const BarChart& chart, double width, const ChartStyle& style);
[[nodiscard]] double contentHeight(const SplitChart& chart, double width, const ChartStyle& style);
[[nodiscard]] double contentHeight(const PointChart& chart, double width, const ChartStyle& style);
[[nodiscard]] double contentHeight(const MapChart& chart, double width, const ChartStyle& style);

std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const SeriesChart& chart,
                                   const ChartStyle& style);
std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const GridChart& chart,
                                   const ChartStyle& style);
std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const BarChart& chart,
                                   const ChartStyle& style);
std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const SplitChart& chart,
                                   const ChartStyle& style);
std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const PointChart& chart,
                                   const ChartStyle& style);
std::vector<ChartSpot> drawContent(QPainter& painter, const QRectF& area, const MapChart& chart,
                                   const ChartStyle& style);

}  // namespace ferrule
