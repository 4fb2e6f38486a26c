// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/session/table_editor.h"
#include "core/drills/drill.h"

namespace ferrule {

/// The table of a drill that is edited: its balls as TableEditor moves them, and its target zone, which is dragged by
/// its inside.
class ZoneEditor : public TableEditor {
  Q_OBJECT
 public:
  explicit ZoneEditor(QWidget* parent = nullptr);

  void setStation(const DrillStation& station);

 signals:
  /// The zone was let go so far from where it was, m.
  void zoneMoved(ferrule::TableVector by);

 protected:
  void paintUnder(QPainter& painter) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;

 private:
  [[nodiscard]] const Zone* zone() const;

  DrillStation station_;
  std::optional<TablePoint> from_;  ///< where the zone was taken hold of
  TableVector by_;                  ///< how far it was dragged
};

/// The zone of the first goal that has one; null without.
[[nodiscard]] const Zone* zoneOf(const DrillStation& station);
/// Moved by so much on a table, its corners kept on the playing surface.
[[nodiscard]] Zone movedZone(const Zone& zone, const Table& table, TableVector by);

}  // namespace ferrule
