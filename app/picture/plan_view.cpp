// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/plan_view.h"

#include <QPainter>

#include "app/picture/ball_painter.h"
#include "app/picture/shot_painter.h"

namespace ferrule {

PlanView::PlanView(QWidget* parent) : PictureView(parent) {
  setObjectName(QStringLiteral("planView"));
  setAccessibleName(tr("Plan of the table"));
  pictureChanged();
}

void PlanView::setTable(const MeasuredTable& measured) {
  if (measured_ == measured) return;
  measured_ = measured;
  pictureChanged();
  update();
}

void PlanView::setShot(std::shared_ptr<const StoredShot> shot) {
  shot_ = std::move(shot);
  balls_ = shot_ ? ballsAt(*shot_, time_s_) : std::vector<BallNow>();
  update();
}

void PlanView::setTime(double time_s) {
  time_s_ = time_s;
  balls_ = shot_ ? ballsAt(*shot_, time_s_) : std::vector<BallNow>();
  update();
}

QSizeF PlanView::contentSize() const {
  const QSizeF space(width() - 2.0 * kMargin_px, height() - 2.0 * kMargin_px);
  return PlanMapping::outerSize_m(measured_.table, PlanMapping::fitsPortrait(measured_.table, space));
}

void PlanView::pictureChanged() {
  const QSizeF space(width() - 2.0 * kMargin_px, height() - 2.0 * kMargin_px);
  mapping_ = PlanMapping(measured_.table, contentOnScreen(), PlanMapping::fitsPortrait(measured_.table, space));
  backdrop_.forget();
}

std::optional<BallName> PlanView::ballUnder(const QPointF& place) const {
  const TablePoint point = mapping_.tableFromScreen(place);
  for (const BallNow& ball : balls_) {
    if (distance(point, ball.position) <= measured_.balls.radius_m()) return ball.ball;
  }
  return std::nullopt;
}

void PlanView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  backdrop_.paint(painter, size(), devicePixelRatioF(), measured_.table, mapping_, inks());
  if (!shot_) return;
  const double radius_m = measured_.balls.radius_m();
  paintShot(
      painter, *shot_, [this](TablePoint point) { return std::optional(mapping_.screenFromTable(point)); },
      [this](TablePoint) { return mapping_.scale(); }, radius_m, lit(), inks());
  for (const BallNow& ball : balls_) {
    paintBall(painter, measured_.balls, ball.ball, mapping_.screenFromTable(ball.position), radius_m * mapping_.scale(),
              {ball.ball == lit(), ball.seen}, inks());
  }
}

}  // namespace ferrule
