// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QPageSize>
#include <functional>
#include <vector>

#include "app/report/reading_order.h"
#include "app/report/report.h"

class QPainter;

/// Puts a report on sheets: the same sheets for a PDF and for a preview.
namespace ferrule {

/// Sheets are laid out in these dots, whatever they are drawn on.
inline constexpr int kSheetDotsPerInch = 1200;

/// Of a whole sheet, dots.
[[nodiscard]] QSizeF sheetSize(QPageSize::PageSizeId paper);

/// Draws a report's sheets in order. next gives the painter of a new sheet, whose origin is the sheet's upper left
/// corner and whose unit is one dot; it stays valid until next is called again.
/// order: is told the parts as they are drawn; may be null.
void printReport(const Report& report, QPageSize::PageSizeId paper, const std::function<QPainter&()>& next,
                 ReadingOrder* order = nullptr);

/// The sheets as pictures, each so many pixels wide.
[[nodiscard]] std::vector<QImage> reportSheets(const Report& report, QPageSize::PageSizeId paper, int width_px);

}  // namespace ferrule
