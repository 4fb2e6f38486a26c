// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>

#include "app/report/chart_painter.h"
#include "app/report/reading_order.h"
#include "app/report/report.h"

class QPainter;

namespace ferrule {

/// The style of everything printed: DejaVu Sans where it is installed, the light palette's inks.
/// unit: device pixels in one point.
[[nodiscard]] ChartStyle paperStyle(double unit);

/// The height of a block at a width, device pixels, with the gap below it.
[[nodiscard]] double blockHeight(const ReportBlock& block, double width, const ChartStyle& style);
/// The same without that gap, which needs no room at a sheet's end.
[[nodiscard]] double inkHeight(const ReportBlock& block, double width, const ChartStyle& style);
/// Draws a block with its upper left corner at a place. painter is at the device's own scale. order: is told the parts;
/// may be null.
void drawBlock(QPainter& painter, QPointF at, const ReportBlock& block, double width, const ChartStyle& style,
               ReadingOrder* order = nullptr);

/// Whether a block must not be the last of a sheet.
[[nodiscard]] bool holdsNext(const ReportBlock& block);

}  // namespace ferrule
