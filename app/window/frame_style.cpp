// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/frame_style.h"

#include <QPainter>
#include <QStyleOption>

#include "app/window/inks.h"

namespace ferrule {

void FrameStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
  QProxyStyle::drawPrimitive(element, option, painter, widget);
  const bool radio = element == PE_IndicatorRadioButton;
  if (!radio && element != PE_IndicatorCheckBox && element != PE_FrameLineEdit) return;
  const Inks inks = inksFor(option->palette);
  if (!inks.isDark) return;
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  painter->setBrush(Qt::NoBrush);
  painter->setPen(QPen(inks.quiet, 1.0));
  const QRectF frame = QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5);
  if (radio) {
    painter->drawEllipse(frame);
  } else {
    painter->drawRoundedRect(frame, 2.0, 2.0);
  }
  painter->restore();
}

}  // namespace ferrule
