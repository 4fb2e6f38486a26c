// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QRectF>

#include "app/report/chart.h"
#include "app/window/inks.h"

class QPainter;

namespace ferrule {

/// How charts are drawn: one painter for paper, HTML and the window.
struct ChartStyle {
  double unit = 1.0;  ///< device pixels in one typographic point
  QFont font;         ///< its family only; sizes follow from unit
  Inks inks;
};

/// font at so many points on a device of this unit.
[[nodiscard]] QFont sizedFont(const ChartStyle& style, double points, bool bold = false);

/// The height that a chart takes at a width, device pixels.
[[nodiscard]] double chartHeight(const Chart& chart, double width, const ChartStyle& style);

/// Draws within a rectangle of the width and chartHeight. Whiskers, counts and words carry everything; shades of one
/// hue repeat it, so that a copy in grey loses nothing.
/// Returns what can be pointed at, in the order in which keys should reach it.
std::vector<ChartSpot> drawChart(QPainter& painter, const QRectF& area, const Chart& chart, const ChartStyle& style);

}  // namespace ferrule
