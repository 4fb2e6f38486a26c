// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "app/picture/plan_picture.h"
#include "app/review/moment.h"

namespace ferrule {

/// The table from above with the balls of one moment and the ways of one shot.
class PlanView : public PlanPicture {
  Q_OBJECT
 public:
  explicit PlanView(QWidget* parent = nullptr);

  /// Empty shows the table alone.
  void setShot(std::shared_ptr<const StoredShot> shot);
  void setTime(double time_s);

  [[nodiscard]] const std::vector<BallNow>& balls() const { return balls_; }

 protected:
  std::optional<BallName> ballUnder(const QPointF& place) const override;
  void paintEvent(QPaintEvent* event) override;

 private:
  std::shared_ptr<const StoredShot> shot_;
  double time_s_ = 0.0;
  std::vector<BallNow> balls_;
};

}  // namespace ferrule
