// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>

namespace ferrule {

/// Every colour that the window's own painters use, worked out from the palette so that light, dark and a user's own
/// colours all work.
///
/// taken and suggested are orange and sky blue, inside and missed bluish green and vermilion of the colour-blind-safe
/// set. Source: Okabe and Ito 2008, Color universal design.
struct Inks {
  QColor page;  ///< behind panels
  QColor panel;
  QColor text;
  QColor quiet;   ///< secondary text; at least 4.5:1 against panel
  QColor line;    ///< hairlines and panel borders
  QColor accent;  ///< marks of our own
  QColor fill;    ///< unselected blocks

  QColor cloth;
  QColor cushion;
  QColor wood;
  QColor pocket;
  QColor sight;
  QColor clothLine;  ///< strings and spots

  QColor taken;
  QColor suggested;
  QColor casing;  ///< thin dark edge that keeps lines readable on every cloth
  bool isDark = false;

  bool operator==(const Inks&) const = default;
};

[[nodiscard]] Inks inksFor(const QPalette& palette);
/// The program's own calm palettes, for desktops that offer none.
[[nodiscard]] QPalette lightPalette();
[[nodiscard]] QPalette darkPalette();

/// The contrast ratio of two colours, 1 to 21. Source: Web content accessibility guidelines 2.1, 1.4.3.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

/// The font itself where its digits are all equally wide, else a near one whose digits are, so that numbers stand in
/// columns.
[[nodiscard]] QFont withTabularFigures(const QFont& font);
[[nodiscard]] bool hasTabularFigures(const QFont& font);
/// font scaled, never below 8 points.
[[nodiscard]] QFont scaled(const QFont& font, double factor, bool bold = false);

}  // namespace ferrule
