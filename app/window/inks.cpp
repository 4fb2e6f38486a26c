// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/inks.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

constexpr double kReadable = 4.5;
constexpr double kLeast_pt = 8.0;

QColor mixed(const QColor& a, const QColor& b, double shareOfB) {
  const auto mix = [shareOfB](int x, int y) { return static_cast<int>(std::lround(x + (y - x) * shareOfB)); };
  return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

double linear(double channel) {
  return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

QPalette paletteOf(const QColor& window, const QColor& base, const QColor& text, const QColor& button,
                   const QColor& highlight, const QColor& highlighted) {
  QPalette palette(button, window);
  const QColor faint = mixed(text, window, 0.55);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::ToolTipText}) {
    palette.setColor(role, text);
    palette.setColor(QPalette::Disabled, role, faint);
  }
  palette.setColor(QPalette::Window, window);
  palette.setColor(QPalette::Base, base);
  palette.setColor(QPalette::AlternateBase, mixed(base, window, 0.5));
  palette.setColor(QPalette::ToolTipBase, base);
  palette.setColor(QPalette::PlaceholderText, mixed(text, base, 0.38));
  palette.setColor(QPalette::BrightText, highlighted);
  palette.setColor(QPalette::Highlight, highlight);
  palette.setColor(QPalette::HighlightedText, highlighted);
  palette.setColor(QPalette::Link, highlight);
  return palette;
}

}  // namespace

Inks inksFor(const QPalette& palette) {
  Inks inks;
  inks.page = palette.color(QPalette::Window);
  inks.panel = palette.color(QPalette::Base);
  inks.text = palette.color(QPalette::Text);
  inks.isDark = luminance(inks.panel) < luminance(inks.text);
  inks.quiet = mixed(inks.text, inks.panel, 0.40);
  const auto faint = [&inks] {
    return std::min(contrast(inks.quiet, inks.panel), contrast(inks.quiet, inks.page)) < kReadable;
  };
  for (double share = 0.35; share >= 0.0 && faint(); share -= 0.05) {
    inks.quiet = mixed(inks.text, inks.panel, share);
  }
  inks.line = mixed(inks.panel, inks.text, inks.isDark ? 0.16 : 0.14);
  inks.fill = mixed(inks.panel, inks.text, 0.28);
  inks.accent = inks.isDark ? QColor(0x6c, 0xc4, 0xb2) : QColor(0x1f, 0x6f, 0x61);
  inks.cloth = QColor(0x3f, 0x7f, 0x6a);
  inks.cushion = QColor(0x35, 0x6c, 0x5a);
  inks.wood = QColor(0x5a, 0x46, 0x38);
  inks.pocket = QColor(0x15, 0x15, 0x16);
  inks.sight = QColor(0xea, 0xe0, 0xc8);
  // 3:1 on the cloth, as lines that carry meaning need. Source: Web content accessibility guidelines 2.1, 1.4.11.
  inks.clothLine = QColor(255, 255, 255, 175);
  inks.taken = QColor(0xe6, 0x9f, 0x00);
  inks.suggested = QColor(0x56, 0xb4, 0xe9);
  inks.casing = QColor(0x14, 0x1a, 0x18, 0xf0);
  return inks;
}

QPalette lightPalette() {
  return paletteOf({0xf3, 0xf2, 0xed}, {0xff, 0xff, 0xff}, {0x1f, 0x23, 0x21}, {0xf0, 0xef, 0xea}, {0x1f, 0x6f, 0x61},
                   {0xff, 0xff, 0xff});
}

QPalette darkPalette() {
  return paletteOf({0x1a, 0x1d, 0x1c}, {0x22, 0x26, 0x26}, {0xe8, 0xeb, 0xe9}, {0x2c, 0x31, 0x30}, {0x2b, 0x7d, 0x6e},
                   {0xff, 0xff, 0xff});
}

double contrast(const QColor& a, const QColor& b) {
  const double x = luminance(a);
  const double y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

bool hasTabularFigures(const QFont& font) {
  const QFontMetricsF metrics(font);
  const double width = metrics.horizontalAdvance(QLatin1Char('0'));
  for (char digit = '1'; digit <= '9'; ++digit) {
    if (std::abs(metrics.horizontalAdvance(QLatin1Char(digit)) - width) > 0.01) return false;
  }
  return true;
}

QFont withTabularFigures(const QFont& font) {
  if (hasTabularFigures(font)) return font;
  for (const char* family : {"Noto Sans", "Liberation Sans", "DejaVu Sans"}) {
    QFont other = font;
    other.setFamilies({QString::fromLatin1(family)});
    if (QFontDatabase::hasFamily(QString::fromLatin1(family)) && hasTabularFigures(other)) return other;
  }
  return font;
}

QFont scaled(const QFont& font, double factor, bool bold) {
  QFont result = font;
  if (font.pointSizeF() > 0.0) {
    result.setPointSizeF(std::max(kLeast_pt, font.pointSizeF() * factor));
  } else {
    result.setPixelSize(std::max(10, static_cast<int>(std::lround(font.pixelSize() * factor))));
  }
  if (bold) result.setWeight(QFont::Bold);
  return result;
}

}  // namespace ferrule
