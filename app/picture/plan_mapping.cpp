// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/plan_mapping.h"

#include <algorithm>

namespace ferrule {

namespace {

double fittingScale(const Table& table, const QSizeF& space, bool portrait) {
  const QSizeF size = PlanMapping::outerSize_m(table, portrait);
  return std::max(1e-6, std::min(space.width() / size.width(), space.height() / size.height()));
}

}  // namespace

PlanMapping::PlanMapping(const Table& table, const QRectF& rectangle, bool portrait)
    : scale_(fittingScale(table, rectangle.size(), portrait)), portrait_(portrait), middle_(rectangle.center()) {}

QSizeF PlanMapping::outerSize_m(const Table& table, bool portrait) {
  const QSizeF size(table.length_m + 2.0 * table.railWidth_m, table.width_m + 2.0 * table.railWidth_m);
  return portrait ? size.transposed() : size;
}

bool PlanMapping::fitsPortrait(const Table& table, const QSizeF& space) {
  // Head on the left is what a coach expects: a nearly square space keeps it.
  constexpr double kClearlyLarger = 1.15;
  return fittingScale(table, space, true) > kClearlyLarger * fittingScale(table, space, false);
}

QPointF PlanMapping::screenFromTable(TablePoint point) const {
  return middle_ + scale_ * (portrait_ ? QPointF(-point.y, -point.x) : QPointF(point.x, -point.y));
}

TablePoint PlanMapping::tableFromScreen(const QPointF& point) const {
  const QPointF away = (point - middle_) / scale_;
  return portrait_ ? TablePoint{-away.y(), -away.x()} : TablePoint{away.x(), -away.y()};
}

QRectF PlanMapping::outline(const Table& table) const {
  const double x = table.length_m / 2.0 + table.railWidth_m;
  const double y = table.width_m / 2.0 + table.railWidth_m;
  return QRectF(screenFromTable({-x, -y}), screenFromTable({x, y})).normalized();
}

}  // namespace ferrule
