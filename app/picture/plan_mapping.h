// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include "core/table/table.h"

namespace ferrule {

/// From the table to a plan picture and back, px. The only place where the table's y (left) is turned into the screen's
/// y (down). Head on the left, foot on the right; in portrait the head is at the bottom, so that left stays left for
/// someone who looks from the head to the foot.
class PlanMapping {
 public:
  PlanMapping() = default;
  /// The whole table with its rails in the middle of a rectangle, as large as it fits.
  PlanMapping(const Table& table, const QRectF& rectangle, bool portrait);

  /// Size of the whole table with its rails, m, as it is turned.
  [[nodiscard]] static QSizeF outerSize_m(const Table& table, bool portrait);
  /// Whether a table is drawn clearly larger in a space when it stands upright.
  [[nodiscard]] static bool fitsPortrait(const Table& table, const QSizeF& space);

  [[nodiscard]] QPointF screenFromTable(TablePoint point) const;
  [[nodiscard]] TablePoint tableFromScreen(const QPointF& point) const;
  /// Pixels a metre.
  [[nodiscard]] double scale() const { return scale_; }
  [[nodiscard]] bool isPortrait() const { return portrait_; }
  /// The whole table with its rails on the screen.
  [[nodiscard]] QRectF outline(const Table& table) const;

  bool operator==(const PlanMapping&) const = default;

 private:
  double scale_ = 1.0;
  bool portrait_ = false;
  QPointF middle_;
};

}  // namespace ferrule
