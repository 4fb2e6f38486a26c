// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/picture/plan_picture.h"
#include "app/words/numbers.h"
#include "core/drills/set_up_check.h"

namespace ferrule {

/// A station's set-up from above: balls, zones, the way it is played, rest places of the cue ball so far. Pointing at a
/// ball, or choosing one with the tab key, shows how to measure its place. While a run goes on a click puts the cue
/// ball's rest; the arrow keys move it (10 mm, with Shift 100 mm), Delete takes it away.
class DrillPicture : public PlanPicture {
  Q_OBJECT
 public:
  explicit DrillPicture(QWidget* parent = nullptr);

  void setStation(const DrillStation& station, const Position& balls);
  void setLeaves(const std::vector<TablePoint>& leaves);
  /// takes: a click means something.
  void setLeave(const std::optional<TablePoint>& leave, bool takes);
  /// Where a camera sees the balls of the set-up now; nothing while none looks.
  void setCheck(const std::optional<SetUpCheck>& check);
  void setNumbers(const Numbers& numbers);
  /// The ball whose place is measured out; nothing for none.
  void setMeasured(std::optional<BallName> ball);

 signals:
  void leavePut(std::optional<ferrule::TablePoint> leave);

 protected:
  std::optional<BallName> ballUnder(const QPointF& place) const override;
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  DrillStation station_;
  Position balls_;
  std::vector<TablePoint> leaves_;
  std::optional<TablePoint> leave_;
  bool takesLeave_ = false;
  std::optional<QPointF> pressed_;
  std::optional<BallName> measuredBall_;
  std::optional<SetUpCheck> check_;
  Numbers numbers_;
};

}  // namespace ferrule
