// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/drill_painter.h"

#include <QPainterPath>
#include <cmath>

#include "app/picture/plan_painter.h"

namespace ferrule {

namespace {

constexpr double kLeave_px = 3.6;
constexpr double kLabelGap_px = 3.0;

QRectF surfaceOn(const PlanMapping& mapping, const Table& table) {
  return QRectF(mapping.screenFromTable({-table.length_m / 2.0, -table.width_m / 2.0}),
                mapping.screenFromTable({table.length_m / 2.0, table.width_m / 2.0}))
      .normalized();
}

/// The zone as it lies on the screen: its corners' shape, widened by the reach.
QPainterPath outlineOf(const Zone& zone, const Table& table, const PlanMapping& mapping) {
  QPolygonF corners;
  for (const TablePoint corner : cornersOf(zone, table))
    corners << mapping.screenFromTable(corner);
  const double reach_px = zone.reach_widths * table.width_m * mapping.scale();
  QPainterPath shape;
  if (corners.size() > 2) {
    shape.addPolygon(corners);
    shape.closeSubpath();
  }
  if (reach_px <= 0.0) return shape;
  QPainterPath around;
  for (const QPointF& corner : corners) {
    QPainterPath disc;
    disc.addEllipse(corner, reach_px, reach_px);
    around = around.united(disc);
  }
  if (corners.size() > 1) {
    QPainterPath line;
    line.addPolygon(corners);
    if (corners.size() > 2) line.closeSubpath();
    QPainterPathStroker stroker;
    stroker.setWidth(2.0 * reach_px);
    around = around.united(stroker.createStroke(line));
  }
  return shape.united(around);
}

/// Dark letters on a light plate, or the other way round, so that they read on cloth and rail.
void paintPlate(QPainter& painter, const QPointF& middle, const QString& words, const Inks& inks) {
  const QRectF text = QFontMetricsF(painter.font()).boundingRect(words);
  QRectF plate(0.0, 0.0, text.width() + 2.0 * kLabelGap_px, text.height() + 1.0);
  plate.moveCenter(middle);
  painter.setPen(Qt::NoPen);
  QColor ground = inks.panel;
  ground.setAlpha(225);
  painter.setBrush(ground);
  painter.drawRoundedRect(plate, 3.0, 3.0);
  painter.setPen(inks.text);
  painter.drawText(plate, Qt::AlignCenter, words);
}

}  // namespace

void paintZone(QPainter& painter, const Zone& zone, const Table& table, const PlanMapping& mapping, const Inks& inks) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(surfaceOn(mapping, table));
  const QPainterPath outline = outlineOf(zone, table, mapping);
  QColor fill = inks.suggested;
  fill.setAlpha(60);
  painter.fillPath(outline, fill);
  painter.fillPath(outline, QBrush(inks.suggested, Qt::BDiagPattern));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(inks.casing, 3.0));
  painter.drawPath(outline);
  painter.setPen(QPen(inks.suggested, 1.6, Qt::DashLine));
  painter.drawPath(outline);
  painter.restore();
}

void paintStation(QPainter& painter, const DrillStation& station, const MeasuredTable& measured,
                  const PlanMapping& mapping, const Inks& inks) {
  if (station.cueBallZone) paintZone(painter, *station.cueBallZone, measured.table, mapping, inks);
  for (const DrillGoal& goal : station.goals) {
    if (goal.zone) paintZone(painter, *goal.zone, measured.table, mapping, inks);
  }
  const auto lines = aimLines(station, measured);
  if (!lines) return;
  PlannedWays ways{{kCueBall, lines->cueBall}};
  if (!lines->objectBall.empty())
    ways.emplace_back(station.goals.front().ball.value_or(BallName(1)), lines->objectBall);
  paintPlannedWays(painter, ways, mapping, inks);
  if (!lines->ghost) return;
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  const double radius_px = measured.balls.radius_m() * mapping.scale();
  painter.setPen(QPen(inks.casing, 3.0));
  painter.drawEllipse(mapping.screenFromTable(*lines->ghost), radius_px, radius_px);
  painter.setPen(QPen(inks.suggested, 1.4));
  painter.drawEllipse(mapping.screenFromTable(*lines->ghost), radius_px, radius_px);
  painter.restore();
}

void paintMeasures(QPainter& painter, TablePoint place, const MeasuredTable& measured, const PlanMapping& mapping,
                   const Inks& inks, const Numbers& numbers) {
  const double x = measured.table.length_m / 2.0;
  const double y = measured.table.width_m / 2.0;
  const TablePoint onEnd{place.x > 0.0 ? x : -x, place.y};
  const TablePoint onSide{place.x, place.y > 0.0 ? y : -y};
  const SurfacePlace widths = surfaceFromTable(measured.table, place);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  for (const TablePoint end : {onEnd, onSide}) {
    const QPointF from = mapping.screenFromTable(place);
    const QPointF to = mapping.screenFromTable(end);
    painter.setPen(QPen(inks.casing, 2.6));
    painter.drawLine(from, to);
    painter.setPen(QPen(Qt::white, 1.0, Qt::DotLine));
    painter.drawLine(from, to);
    paintPlate(painter, from + 0.5 * (to - from), numbers.millimetres(distance(place, end)), inks);
  }
  // On the rails, where the sights are: along on the long one, across on the short one.
  const TablePoint alongAt{place.x,
                           place.y > 0.0 ? y + measured.table.sightOffset_m : -y - measured.table.sightOffset_m};
  const TablePoint acrossAt{place.x > 0.0 ? x + measured.table.sightOffset_m : -x - measured.table.sightOffset_m,
                            place.y};
  paintPlate(painter, mapping.screenFromTable(alongAt), numbers.fixed(4.0 * widths.along, 2), inks);
  paintPlate(painter, mapping.screenFromTable(acrossAt), numbers.fixed(4.0 * widths.across, 2), inks);
  painter.restore();
}

void paintPlaced(QPainter& painter, const SetUpCheck& check, const MeasuredTable& measured, const PlanMapping& mapping,
                 const Inks& inks, const Numbers& numbers) {
  const double radius_px = measured.balls.radius_m() * mapping.scale();
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  for (const PlacedBall& place : check.places) {
    if (!place.found) continue;
    const QPointF at = mapping.screenFromTable(place.found->position);
    painter.setPen(QPen(inks.casing, 3.6));
    painter.drawEllipse(at, radius_px, radius_px);
    painter.setPen(QPen(inks.taken, 1.8));
    painter.drawEllipse(at, radius_px, radius_px);
    const auto error = place.error();
    paintPlate(painter, at + QPointF(0.0, -2.2 * radius_px), numbers.millimetres(std::hypot(error->x, error->y)), inks);
  }
  painter.restore();
}

void paintLeaves(QPainter& painter, std::span<const TablePoint> leaves, const Table& table, const PlanMapping& mapping,
                 const Inks& inks) {
  if (const auto scatter = leaveScatter(leaves)) {
    paintTakenLeave(painter, {scatter->mean, scatter->along_m, scatter->across_m, scatter->direction_rad}, table,
                    mapping, inks);
  }
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(inks.casing, 1.2));
  painter.setBrush(inks.taken);
  for (const TablePoint leave : leaves)
    painter.drawEllipse(mapping.screenFromTable(leave), kLeave_px, kLeave_px);
  painter.restore();
}

}  // namespace ferrule
