// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/plan_picture.h"

#include <QPainter>

#include "app/picture/table_painter.h"

namespace ferrule {

PlanPicture::PlanPicture(QWidget* parent) : PictureView(parent) {
  PlanPicture::pictureChanged();
}

void PlanPicture::setTable(const MeasuredTable& measured) {
  if (measured_ == measured) return;
  measured_ = measured;
  pictureChanged();
  update();
}

QSizeF PlanPicture::contentSize() const {
  const QSizeF space(width() - 2.0 * kMargin_px, height() - 2.0 * kMargin_px);
  return PlanMapping::outerSize_m(measured_.table, PlanMapping::fitsPortrait(measured_.table, space));
}

void PlanPicture::pictureChanged() {
  const QSizeF space(width() - 2.0 * kMargin_px, height() - 2.0 * kMargin_px);
  mapping_ = PlanMapping(measured_.table, contentOnScreen(), PlanMapping::fitsPortrait(measured_.table, space));
  table_ = QPixmap();
}

void PlanPicture::paintEmptyTable(QPainter& painter) {
  const double ratio = devicePixelRatioF();
  if (table_.isNull() || table_.devicePixelRatio() != ratio) {
    table_ = QPixmap((QSizeF(size()) * ratio).toSize());
    table_.setDevicePixelRatio(ratio);
    table_.fill(Qt::transparent);
    QPainter tablePainter(&table_);
    drawEmptyTable(tablePainter);
  }
  painter.drawPixmap(0, 0, table_);
}

void PlanPicture::drawEmptyTable(QPainter& painter) const {
  paintTable(painter, measured_.table, mapping_, inks());
}

}  // namespace ferrule
