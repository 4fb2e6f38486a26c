// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>

#include "app/picture/plan_picture.h"
#include "core/camera/error_map.h"

namespace ferrule {

/// The table from above, coloured by how far a ball may be off (95 %), with the millimetres written in; one place is
/// marked, and a shot may be drawn. The place is moved by a click or with the arrow keys.
class ErrorMapView : public PlanPicture {
  Q_OBJECT
 public:
  explicit ErrorMapView(QWidget* parent = nullptr);

  void setMap(std::shared_ptr<const ErrorMap> map, const MeasuredTable& measured);
  [[nodiscard]] TablePoint place() const { return place_; }
  void setShot(std::optional<std::array<TablePoint, 3>> shot);  ///< cue ball, object ball, the pocket's mouth

 signals:
  void placeChosen(ferrule::TablePoint place);

 protected:
  std::optional<BallName> ballUnder(const QPointF&) const override { return std::nullopt; }
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void choose(TablePoint place);
  void paintHeat(QPainter& painter);
  void paintScale(QPainter& painter) const;
  void paintShot(QPainter& painter) const;

  std::shared_ptr<const ErrorMap> map_;
  QImage heat_;  ///< one pixel for each place that was worked out, head to the left
  double most_m_ = 0.0;
  TablePoint place_{0.0, 0.0};
  std::optional<std::array<TablePoint, 3>> shot_;
};

}  // namespace ferrule
