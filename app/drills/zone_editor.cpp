// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/zone_editor.h"

#include <QMouseEvent>
#include <algorithm>

#include "app/drills/drill_painter.h"

namespace ferrule {

const Zone* zoneOf(const DrillStation& station) {
  const auto found = std::ranges::find_if(station.goals, [](const DrillGoal& goal) { return goal.zone.has_value(); });
  return found == station.goals.end() ? nullptr : &*found->zone;
}

Zone movedZone(const Zone& zone, const Table& table, TableVector by) {
  // As far as all corners can go.
  for (const TablePoint corner : cornersOf(zone, table)) {
    by.x = std::clamp(by.x, -table.length_m / 2.0 - corner.x, table.length_m / 2.0 - corner.x);
    by.y = std::clamp(by.y, -table.width_m / 2.0 - corner.y, table.width_m / 2.0 - corner.y);
  }
  Zone moved = zone;
  for (SurfacePlace& corner : moved.corners)
    corner = surfaceFromTable(table, tableFromSurface(table, corner) + by);
  return moved;
}

ZoneEditor::ZoneEditor(QWidget* parent) : TableEditor(parent) {
  setObjectName(QStringLiteral("drillEditor"));
}

void ZoneEditor::setStation(const DrillStation& station) {
  station_ = station;
  from_.reset();
  update();
}

const Zone* ZoneEditor::zone() const {
  return zoneOf(station_);
}

void ZoneEditor::paintUnder(QPainter& painter) {
  if (zone() == nullptr) return;
  const Table& table = measured().table;
  paintZone(painter, from_ ? movedZone(*zone(), table, by_) : *zone(), table, mapping(), inks());
}

void ZoneEditor::mousePressEvent(QMouseEvent* event) {
  const TablePoint place = mapping().tableFromScreen(event->position());
  const bool holds = event->button() == Qt::LeftButton && zone() != nullptr && !ballUnder(event->position()) &&
                     distanceFrom_m(*zone(), measured().table, place) == 0.0;
  if (!holds) {
    TableEditor::mousePressEvent(event);
    return;
  }
  setFocus(Qt::MouseFocusReason);
  from_ = place;
  by_ = {};
}

void ZoneEditor::mouseMoveEvent(QMouseEvent* event) {
  if (!from_) {
    TableEditor::mouseMoveEvent(event);
    return;
  }
  by_ = mapping().tableFromScreen(event->position()) - *from_;
  update();
}

void ZoneEditor::mouseReleaseEvent(QMouseEvent* event) {
  if (!from_) {
    TableEditor::mouseReleaseEvent(event);
    return;
  }
  from_.reset();
  update();
  if (by_ != TableVector{}) emit zoneMoved(by_);
}

}  // namespace ferrule
