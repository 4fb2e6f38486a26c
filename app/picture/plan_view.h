// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <vector>

#include "app/picture/plan_picture.h"
#include "app/picture/planned_ways.h"
#include "app/review/moment.h"
#include "core/planner/chances.h"

namespace ferrule {

/// The table from above with the balls of one moment and the ways of one shot.
class PlanView : public PlanPicture {
  Q_OBJECT
 public:
  explicit PlanView(QWidget* parent = nullptr);

  /// Empty shows the table alone.
  void setShot(std::shared_ptr<const StoredShot> shot);
  /// The balls of one image, without a shot: as it is measured.
  void setBalls(std::vector<BallNow> balls);
  /// What had been suggested for the shot, drawn under what was played; nothing shows nothing. taken: the leave that
  /// the taken shot had to expect.
  void setSuggested(const PlannedWays& ways, const std::optional<Leave>& suggested, const std::optional<Leave>& taken);
  void setTime(double time_s);

  [[nodiscard]] const std::vector<BallNow>& balls() const { return balls_; }

  /// The picture as it is shown, for a file; in the units of the widget.
  void drawFor(QPainter& painter) const;

 protected:
  std::optional<BallName> ballUnder(const QPointF& place) const override;
  void paintEvent(QPaintEvent* event) override;

 private:
  void drawShot(QPainter& painter) const;

  std::shared_ptr<const StoredShot> shot_;
  double time_s_ = 0.0;
  std::vector<BallNow> balls_;
  PlannedWays suggestedWays_;
  std::optional<Leave> suggestedLeave_;
  std::optional<Leave> takenLeave_;
};

}  // namespace ferrule
