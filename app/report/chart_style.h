// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QString>

#include "app/window/inks.h"

namespace ferrule {

/// How charts look: the same on paper, in HTML and in the window.
struct ChartStyle {
  double unit = 1.0;  ///< device pixels in one typographic point
  /// Dots in a point at which axes and series are laid out. Qt Charts keeps distances of whole dots whatever the size
  /// of the letters, so paper is laid out at one grain and scaled; 0: at the device's own pixels, which suits a screen.
  double grain = 0.0;
  QFont font;  ///< its family only; sizes follow from unit
  Inks inks;
};

inline constexpr double kChartTitle_pt = 10.0;
inline constexpr double kChartText_pt = 8.0;
inline constexpr double kChartSmall_pt = 7.0;

/// font at so many points on a device of this unit.
[[nodiscard]] QFont sizedFont(const ChartStyle& style, double points, bool bold = false);
/// How wide words are at so many points, device pixels.
[[nodiscard]] double wordsWidth(const ChartStyle& style, const QString& words, double points, bool bold = false);
/// A shade of the accent from 0 to 1, light enough for the text's ink on every one of them.
[[nodiscard]] QColor shadeOf(const Inks& inks, double share);

}  // namespace ferrule
