// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPixmap>

#include "app/picture/plan_mapping.h"
#include "app/window/inks.h"

class QPainter;

namespace ferrule {

/// The empty table of a plan, drawn once and kept until its size, its inks or the table change.
class TableBackdrop {
 public:
  /// To be drawn again the next time.
  void forget() { picture_ = QPixmap(); }
  /// size: of the widget, px; ratio: device pixels a px.
  void paint(QPainter& painter, const QSizeF& size, double ratio, const Table& table, const PlanMapping& mapping,
             const Inks& inks);

 private:
  QPixmap picture_;
};

}  // namespace ferrule
