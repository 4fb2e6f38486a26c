// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/plan_view.h"

#include <QPainter>

#include "app/picture/ball_painter.h"
#include "app/picture/plan_painter.h"
#include "app/picture/shot_painter.h"

namespace ferrule {

PlanView::PlanView(QWidget* parent) : PlanPicture(parent) {
  setObjectName(QStringLiteral("planView"));
  setAccessibleName(tr("Plan of the table"));
}

void PlanView::setShot(std::shared_ptr<const StoredShot> shot) {
  shot_ = std::move(shot);
  balls_ = shot_ ? ballsAt(*shot_, time_s_) : std::vector<BallNow>();
  update();
}

void PlanView::setBalls(std::vector<BallNow> balls) {
  shot_.reset();
  balls_ = std::move(balls);
  update();
}

void PlanView::setSuggested(const PlannedWays& ways, const std::optional<Leave>& suggested,
                            const std::optional<Leave>& taken) {
  suggestedWays_ = ways;
  suggestedLeave_ = suggested;
  takenLeave_ = taken;
  update();
}

void PlanView::setTime(double time_s) {
  time_s_ = time_s;
  balls_ = shot_ ? ballsAt(*shot_, time_s_) : std::vector<BallNow>();
  update();
}

std::optional<BallName> PlanView::ballUnder(const QPointF& place) const {
  return ballAmong(balls_, place);
}

void PlanView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintEmptyTable(painter);
  drawShot(painter);
}

void PlanView::drawFor(QPainter& painter) const {
  drawEmptyTable(painter);
  drawShot(painter);
}

void PlanView::drawShot(QPainter& painter) const {
  if (takenLeave_) paintTakenLeave(painter, *takenLeave_, measured().table, mapping(), inks());
  if (suggestedLeave_) paintLeave(painter, *suggestedLeave_, measured().table, mapping(), inks());
  paintPlannedWays(painter, suggestedWays_, mapping(), inks());
  const double radius_m = measured().balls.radius_m();
  if (shot_) {
    paintShot(
        painter, *shot_, [this](TablePoint point) { return std::optional(mapping().screenFromTable(point)); },
        [this](TablePoint) { return mapping().scale(); }, radius_m, lit(), inks());
  }
  for (const BallNow& ball : balls_) {
    paintBall(painter, measured().balls, ball.ball, mapping().screenFromTable(ball.position),
              radius_m * mapping().scale(), {ball.ball == lit(), ball.seen}, inks());
  }
}

}  // namespace ferrule
