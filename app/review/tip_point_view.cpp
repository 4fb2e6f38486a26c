// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/tip_point_view.h"

#include <QEvent>
#include <QPainter>
#include <algorithm>

#include "app/picture/coverage.h"

namespace ferrule {

namespace {

constexpr int kSize_px = 84;
/// Share of the radius beyond which a chalked tip slips: common practice, no source.
constexpr double kMiscueLimit = 0.5;

}  // namespace

TipPointView::TipPointView(QWidget* parent) : QWidget(parent), inks_(inksFor(palette())) {
  setObjectName(QStringLiteral("tipPointView"));
  setAccessibleName(tr("Tip point on the cue ball's face"));
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void TipPointView::setPoint(const std::optional<Measured>& side, const std::optional<Measured>& height) {
  side_ = side;
  height_ = height;
  update();
}

QSize TipPointView::sizeHint() const {
  return {kSize_px, kSize_px};
}

void TipPointView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPointF centre = rect().toRectF().center();
  const double r = kSize_px / 2.0 - 2.0;
  painter.setPen(QPen(QColor(0, 0, 0, 70), 1.0));
  painter.setBrush(QColor(0xf8, 0xf5, 0xec));
  painter.drawEllipse(centre, r, r);
  painter.setPen(QPen(QColor(0, 0, 0, 45), 1.0));
  painter.drawLine(centre - QPointF(r, 0), centre + QPointF(r, 0));
  painter.drawLine(centre - QPointF(0, r), centre + QPointF(0, r));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(QColor(0, 0, 0, 120), 1.0, Qt::DotLine));
  painter.drawEllipse(centre, kMiscueLimit * r, kMiscueLimit * r);
  painter.setClipRect(rect());
  QColor area = inks_.taken;
  area.setAlpha(70);
  if (side_ && height_) {
    const QPointF at = centre + r * QPointF(side_->value, -height_->value);
    painter.setPen(QPen(inks_.taken.darker(130), 1.0));
    painter.setBrush(area);
    painter.drawEllipse(at, std::max(2.5, kEllipse95 * r * side_->standardUncertainty),
                        std::max(2.5, kEllipse95 * r * height_->standardUncertainty));
    painter.setPen(QPen(inks_.casing, 1.2));
    painter.setBrush(inks_.taken);
    painter.drawEllipse(at, 3.6, 3.6);
  } else if (side_ || height_) {
    // One of the two is known: a band across the face.
    const Measured& known = side_ ? *side_ : *height_;
    const double at = (side_ ? 1.0 : -1.0) * known.value * r;
    const double half = std::max(1.5, 1.96 * r * known.standardUncertainty);
    painter.setPen(Qt::NoPen);
    painter.setBrush(area);
    const double reach = r * 0.98;
    painter.drawRect(side_ ? QRectF(centre.x() + at - half, centre.y() - reach, 2.0 * half, 2.0 * reach)
                           : QRectF(centre.x() - reach, centre.y() + at - half, 2.0 * reach, 2.0 * half));
  }
}

void TipPointView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) inks_ = inksFor(palette());
  QWidget::changeEvent(event);
}

}  // namespace ferrule
