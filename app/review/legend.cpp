// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/legend.h"

#include <QPainter>

#include "app/window/inks.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr int kLine_px = 22;
constexpr int kGap_px = 6;
constexpr int kBetween_px = 8;

}  // namespace

Legend::Legend(QWidget* parent) : QWidget(parent) {
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
  setToolTip(
      tr("Solid: the way as it was measured, filled: where the taken shot would leave the cue ball. Dashed: the "
         "suggested shot, hatched: its leave. Dotted: predicted while the ball was hidden. Dot: a contact."));
  setAccessibleName(listOf({taken(), suggested()}));
}

QString Legend::taken() const {
  return tr("taken", "the shot as it was played");
}

QString Legend::suggested() const {
  return tr("suggested", "the shot that was ranked first");
}

QSize Legend::sizeHint() const {
  const QFontMetrics metrics = fontMetrics();
  return {2 * (kLine_px + kGap_px) + kBetween_px + metrics.horizontalAdvance(taken()) +
              metrics.horizontalAdvance(suggested()) + 4,
          metrics.height() + 8};
}

void Legend::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Inks inks = inksFor(palette());
  const double y = height() / 2.0;
  double x = 0.0;
  const auto entry = [&](const QPen& pen, double casing_px, const QString& words) {
    painter.setPen(QPen(inks.casing, casing_px, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(QPointF(x + 3.0, y), QPointF(x + kLine_px - 3.0, y));
    painter.setPen(pen);
    painter.drawLine(QPointF(x + 3.0, y), QPointF(x + kLine_px - 3.0, y));
    painter.setPen(inks.text);
    x += kLine_px + kGap_px;
    painter.drawText(QRectF(x, 0, width(), height()), Qt::AlignVCenter | Qt::AlignLeft, words);
    x += fontMetrics().horizontalAdvance(words) + kBetween_px;
  };
  entry(QPen(inks.taken, 3.0, Qt::SolidLine, Qt::RoundCap), 5.0, taken());
  entry(QPen(inks.suggested, 1.8, Qt::DashLine), 3.6, suggested());
}

}  // namespace ferrule
