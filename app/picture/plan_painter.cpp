// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/plan_painter.h"

#include <QtMath>
#include <cmath>
#include <numbers>

#include "app/picture/coverage.h"

namespace ferrule {

namespace {

/// Dark on both sides of a line, together.
constexpr double kCasing_px = 3.2;

}  // namespace

void paintPlannedWays(QPainter& painter, const PlannedWays& ways, const PlanMapping& mapping, const Inks& inks) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  for (const auto& [ball, way] : ways) {
    QPolygonF line;
    for (const TablePoint place : way)
      line << mapping.screenFromTable(place);
    painter.setPen(QPen(inks.casing, 1.8 + kCasing_px));
    painter.drawPolyline(line);
    painter.setPen(QPen(inks.suggested, 1.8, Qt::DashLine));
    painter.drawPolyline(line);
  }
}

namespace {

/// Of the playing surface.
constexpr double kMostOfTable = 0.4;

/// The outline has a casing and its full strength, whatever the cloth is; only what fills it lets the cloth through.
void paintEllipse(QPainter& painter, const Leave& leave, const Table& table, const PlanMapping& mapping,
                  const Inks& inks, const QPen& pen, const QBrush& brush, double opacity) {
  // A leave that may be anywhere is none: filled it would pass for another cloth, its outline for a ball's way.
  const double area_m2 = std::numbers::pi * kEllipse95 * kEllipse95 * leave.along_m * leave.across_m;
  if (area_m2 > kMostOfTable * table.length_m * table.width_m) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  // A normal distribution knows no cushions; no ball rests beyond them.
  painter.setClipRect(QRectF(mapping.screenFromTable({-table.length_m / 2.0, -table.width_m / 2.0}),
                             mapping.screenFromTable({table.length_m / 2.0, table.width_m / 2.0}))
                          .normalized());
  const QPointF middle = mapping.screenFromTable(leave.mean);
  painter.translate(middle);
  const QPointF along =
      mapping.screenFromTable(leave.mean + TableVector{std::cos(leave.direction_rad), std::sin(leave.direction_rad)}) -
      middle;
  painter.rotate(qRadiansToDegrees(std::atan2(along.y(), along.x())));
  const double a = kEllipse95 * leave.along_m * mapping.scale();
  const double b = kEllipse95 * leave.across_m * mapping.scale();
  painter.setPen(Qt::NoPen);
  painter.setBrush(brush);
  painter.setOpacity(opacity);
  painter.drawEllipse(QPointF(), a, b);
  painter.setOpacity(1.0);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(inks.casing, pen.widthF() + kCasing_px));
  painter.drawEllipse(QPointF(), a, b);
  painter.setPen(pen);
  painter.drawEllipse(QPointF(), a, b);
  painter.restore();
}

}  // namespace

void paintLeave(QPainter& painter, const Leave& leave, const Table& table, const PlanMapping& mapping,
                const Inks& inks) {
  paintEllipse(painter, leave, table, mapping, inks, QPen(inks.suggested, 1.6, Qt::DashLine),
               QBrush(inks.suggested, Qt::BDiagPattern), 0.5);
}

void paintTakenLeave(QPainter& painter, const Leave& leave, const Table& table, const PlanMapping& mapping,
                     const Inks& inks) {
  paintEllipse(painter, leave, table, mapping, inks, QPen(inks.taken, 1.6), QBrush(inks.taken), 0.28);
}

}  // namespace ferrule
