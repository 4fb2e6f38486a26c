// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/appearance.h"

#include <QApplication>
#include <QStyle>

#include "app/window/frame_style.h"
#include "app/window/inks.h"

namespace ferrule {

namespace {

/// The desktop's palette, as it was before the program set any.
const QPalette& systemPalette() {
  static const QPalette palette = QApplication::palette();
  return palette;
}

/// Whether the desktop brought no colours of its own, so that the toolkit's grey stands in.
bool isToolkitDefault(const QPalette& palette) {
  return palette.color(QPalette::Window) == QApplication::style()->standardPalette().color(QPalette::Window);
}

}  // namespace

void applyAppearance(Appearance appearance) {
  const QPalette& system = systemPalette();
  static const bool framed = [] {
    QApplication::setStyle(new FrameStyle);
    return true;
  }();
  Q_UNUSED(framed)
  switch (appearance) {
    case Appearance::Light:
      QApplication::setPalette(lightPalette());
      return;
    case Appearance::Dark:
      QApplication::setPalette(darkPalette());
      return;
    case Appearance::System:
      break;
  }
  QApplication::setPalette(isToolkitDefault(system) ? lightPalette() : system);
}

QString toSetting(Appearance appearance) {
  switch (appearance) {
    case Appearance::Light:
      return QStringLiteral("light");
    case Appearance::Dark:
      return QStringLiteral("dark");
    case Appearance::System:
      break;
  }
  return QStringLiteral("system");
}

Appearance appearanceFromSetting(const QString& text) {
  for (const Appearance appearance : {Appearance::Light, Appearance::Dark}) {
    if (toSetting(appearance) == text) return appearance;
  }
  return Appearance::System;
}

}  // namespace ferrule
