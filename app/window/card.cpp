// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/card.h"

#include <QPainter>

#include "app/window/inks.h"

namespace ferrule {

namespace {

constexpr double kCorner_px = 6.0;

}  // namespace

void Card::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Inks inks = inksFor(palette());
  painter.setPen(QPen(inks.line, 1.0));
  painter.setBrush(inks.panel);
  painter.drawRoundedRect(rect().toRectF().adjusted(0.5, 0.5, -0.5, -0.5), kCorner_px, kCorner_px);
}

QColor ElidedLabel::ink() const {
  return palette().color(foregroundRole());
}

QColor QuietLabel::ink() const {
  return inksFor(palette()).quiet;
}

void ElidedLabel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(ink());
  painter.setFont(font());
  const QString shown = wordWrap() ? text() : fontMetrics().elidedText(text(), Qt::ElideRight, width());
  painter.drawText(rect(), static_cast<int>(alignment()) | (wordWrap() ? Qt::TextWordWrap : 0), shown);
}

}  // namespace ferrule
