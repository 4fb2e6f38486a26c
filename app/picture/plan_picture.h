// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPixmap>

#include "app/picture/picture_view.h"
#include "app/picture/plan_mapping.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// The table from above, without balls: what every plan view shares. The empty table is drawn once and kept until size,
/// inks or table change.
class PlanPicture : public PictureView {
  Q_OBJECT
 public:
  explicit PlanPicture(QWidget* parent = nullptr);

  void setTable(const MeasuredTable& measured);

  [[nodiscard]] const PlanMapping& mapping() const { return mapping_; }

 protected:
  QSizeF contentSize() const override;
  void pictureChanged() override;

  [[nodiscard]] const MeasuredTable& measured() const { return measured_; }
  void paintEmptyTable(QPainter& painter);
  /// The same, drawn anew: as lines, for a file.
  void drawEmptyTable(QPainter& painter) const;
  /// Of balls with a name and a position, the one drawn at a place of the widget.
  template <class Balls>
  [[nodiscard]] std::optional<BallName> ballAmong(const Balls& balls, const QPointF& place) const {
    const TablePoint point = mapping_.tableFromScreen(place);
    for (const auto& ball : balls) {
      if (distance(point, ball.position) <= measured_.balls.radius_m()) return ball.ball;
    }
    return std::nullopt;
  }

 private:
  MeasuredTable measured_;
  PlanMapping mapping_;
  QPixmap table_;  ///< under mapping_; null when it must be drawn again
};

}  // namespace ferrule
