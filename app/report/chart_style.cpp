// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/chart_style.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace ferrule {

QFont sizedFont(const ChartStyle& style, double points, bool bold) {
  QFont font = style.font;
  font.setPixelSize(std::max(1, static_cast<int>(std::lround(points * style.unit))));
  font.setWeight(bold ? QFont::Bold : QFont::Normal);
  return font;
}

double wordsWidth(const ChartStyle& style, const QString& words, double points, bool bold) {
  return QFontMetricsF(sizedFont(style, points, bold)).horizontalAdvance(words);
}

QColor shadeOf(const Inks& inks, double share) {
  const double mix = 0.08 + 0.50 * std::clamp(share, 0.0, 1.0);
  const auto channel = [mix](int from, int to) { return static_cast<int>(std::lround(from + mix * (to - from))); };
  return {channel(inks.panel.red(), inks.accent.red()), channel(inks.panel.green(), inks.accent.green()),
          channel(inks.panel.blue(), inks.accent.blue())};
}

}  // namespace ferrule
