// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "app/picture/picture_view.h"
#include "app/picture/plan_mapping.h"
#include "app/picture/table_backdrop.h"
#include "app/review/moment.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// The table from above with the balls of one moment and the ways of one shot.
class PlanView : public PictureView {
  Q_OBJECT
 public:
  explicit PlanView(QWidget* parent = nullptr);

  void setTable(const MeasuredTable& measured);
  /// Empty shows the table alone.
  void setShot(std::shared_ptr<const StoredShot> shot);
  void setTime(double time_s);

  [[nodiscard]] const PlanMapping& mapping() const { return mapping_; }
  [[nodiscard]] const std::vector<BallNow>& balls() const { return balls_; }

 protected:
  QSizeF contentSize() const override;
  std::optional<BallName> ballUnder(const QPointF& place) const override;
  void pictureChanged() override;
  void paintEvent(QPaintEvent* event) override;

 private:
  MeasuredTable measured_;
  std::shared_ptr<const StoredShot> shot_;
  double time_s_ = 0.0;
  std::vector<BallNow> balls_;
  PlanMapping mapping_;
  TableBackdrop backdrop_;
};

}  // namespace ferrule
