// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/table_backdrop.h"

#include <QPainter>

#include "app/picture/table_painter.h"

namespace ferrule {

void TableBackdrop::paint(QPainter& painter, const QSizeF& size, double ratio, const Table& table,
                          const PlanMapping& mapping, const Inks& inks) {
  if (picture_.isNull() || picture_.devicePixelRatio() != ratio) {
    picture_ = QPixmap((size * ratio).toSize());
    picture_.setDevicePixelRatio(ratio);
    picture_.fill(Qt::transparent);
    QPainter tablePainter(&picture_);
    paintTable(tablePainter, table, mapping, inks);
  }
  painter.drawPixmap(0, 0, picture_);
}

}  // namespace ferrule
