// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <vector>

#include "app/report/chart.h"
#include "app/report/chart_style.h"

class QPainter;

/// Every chart is drawn here, for paper, HTML, exports and the window alike: what has axes is built of Qt Charts
/// (chart_plot.h), the make-rate grid and the map of the table have no form there and are painted.
namespace ferrule {

/// The height that a chart takes at a width, device pixels.
[[nodiscard]] double chartHeight(const Chart& chart, double width, const ChartStyle& style);

/// Draws within a rectangle of the width and chartHeight. Needs a QApplication, which may be an offscreen one.
/// Whiskers, counts and words carry everything; shades of one hue repeat it, so that a copy in grey loses nothing.
/// Returns what can be pointed at, in the order in which keys should reach it.
std::vector<ChartSpot> drawChart(QPainter& painter, const QRectF& area, const Chart& chart, const ChartStyle& style);

}  // namespace ferrule
