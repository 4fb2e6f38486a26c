// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/legend.h"

#include <QPainter>

#include "app/window/inks.h"

namespace ferrule {

namespace {

constexpr int kLine_px = 28;
constexpr int kGap_px = 6;

}  // namespace

Legend::Legend(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setToolTip(tr("Solid: the way as it was measured. Dotted: predicted while the ball was hidden. Dot: a contact."));
  setAccessibleName(words());
}

QString Legend::words() const {
  return tr("taken", "the shot as it was played");
}

QSize Legend::sizeHint() const {
  return {kLine_px + kGap_px + fontMetrics().horizontalAdvance(words()) + 4, fontMetrics().height() + 8};
}

void Legend::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Inks inks = inksFor(palette());
  const double y = height() / 2.0;
  painter.setPen(QPen(inks.casing, 5.0, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(QPointF(3.0, y), QPointF(kLine_px - 3.0, y));
  painter.setPen(QPen(inks.taken, 3.0, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(QPointF(3.0, y), QPointF(kLine_px - 3.0, y));
  painter.setPen(inks.text);
  painter.drawText(QRectF(kLine_px + kGap_px, 0, width(), height()), Qt::AlignVCenter | Qt::AlignLeft, words());
}

}  // namespace ferrule
