// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/drill_picture.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "app/drills/drill_painter.h"
#include "app/picture/ball_painter.h"
#include "app/window/spoken_role.h"

namespace ferrule {

namespace {

constexpr double kStep_m = 0.010;
constexpr double kFarStep_m = 0.100;

bool isStep(int key) {
  return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

}  // namespace

DrillPicture::DrillPicture(QWidget* parent) : PlanPicture(parent) {
  setObjectName(QStringLiteral("drillPicture"));
  setAccessibleName(tr("Set-up; in a run a click or the arrow keys put where the cue ball came to rest"));
  setFocusPolicy(Qt::StrongFocus);
  speakAs(this, QAccessible::Graphic);
  connect(this, &PictureView::pointed, this, &DrillPicture::setMeasured);
}

void DrillPicture::setStation(const DrillStation& station, const Position& balls) {
  station_ = station;
  balls_ = balls;
  update();
}

void DrillPicture::setLeaves(const std::vector<TablePoint>& leaves) {
  leaves_ = leaves;
  update();
}

void DrillPicture::setLeave(const std::optional<TablePoint>& leave, bool takes) {
  leave_ = leave;
  takesLeave_ = takes;
  setCursor(takes ? Qt::CrossCursor : Qt::ArrowCursor);
  update();
}

void DrillPicture::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  update();
}

void DrillPicture::setMeasured(std::optional<BallName> ball) {
  measuredBall_ = ball;
  setLit(ball);
  update();
}

void DrillPicture::setCheck(const std::optional<SetUpCheck>& check) {
  if (check_ == check) return;
  check_ = check;
  update();
}

std::optional<BallName> DrillPicture::ballUnder(const QPointF& place) const {
  return ballAmong(balls_, place);
}

bool DrillPicture::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride && takesLeave_) {
    // The window's keys for stepping through a film are the ones that move the leave here.
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (isStep(key) || key == Qt::Key_Delete || key == Qt::Key_Backspace) {
      event->accept();
      return true;
    }
  }
  return PlanPicture::event(event);
}

void DrillPicture::mousePressEvent(QMouseEvent* event) {
  pressed_ = event->button() == Qt::LeftButton ? std::optional(event->position()) : std::nullopt;
  PictureView::mousePressEvent(event);
}

void DrillPicture::mouseReleaseEvent(QMouseEvent* event) {
  PictureView::mouseReleaseEvent(event);
  if (takesLeave_) setCursor(Qt::CrossCursor);
  const bool still = pressed_ && (event->position() - *pressed_).manhattanLength() < QApplication::startDragDistance();
  pressed_.reset();
  if (!takesLeave_ || !still) return;
  const TablePoint place = mapping().tableFromScreen(event->position());
  if (onPlayingSurface(measured().table, place)) emit leavePut(place);
}

void DrillPicture::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  if (!takesLeave_ || (!isStep(key) && key != Qt::Key_Delete && key != Qt::Key_Backspace)) {
    event->ignore();
    return;
  }
  if (!isStep(key)) {
    emit leavePut(std::nullopt);
    return;
  }
  const double step_px = (event->modifiers().testFlag(Qt::ShiftModifier) ? kFarStep_m : kStep_m) * mapping().scale();
  QPointF at = mapping().screenFromTable(leave_.value_or(TablePoint{}));
  if (key == Qt::Key_Left) at.rx() -= step_px;
  if (key == Qt::Key_Right) at.rx() += step_px;
  if (key == Qt::Key_Up) at.ry() -= step_px;
  if (key == Qt::Key_Down) at.ry() += step_px;
  TablePoint place = mapping().tableFromScreen(at);
  const double x = measured().table.length_m / 2.0 - measured().balls.radius_m();
  const double y = measured().table.width_m / 2.0 - measured().balls.radius_m();
  place = {std::clamp(place.x, -x, x), std::clamp(place.y, -y, y)};
  emit leavePut(place);
}

void DrillPicture::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintEmptyTable(painter);
  paintStation(painter, station_, measured(), mapping(), inks());
  paintLeaves(painter, leaves_, measured().table, mapping(), inks());
  const double radius_px = measured().balls.radius_m() * mapping().scale();
  for (const BallAt& ball : balls_) {
    paintBall(painter, measured().balls, ball.ball, mapping().screenFromTable(ball.position), radius_px,
              {ball.ball == lit(), true}, inks());
  }
  if (check_) paintPlaced(painter, *check_, measured(), mapping(), inks(), numbers_);
  if (leave_) {
    // Where it was put in: a faint cue ball.
    paintBall(painter, measured().balls, kCueBall, mapping().screenFromTable(*leave_), radius_px, {true, false},
              inks());
  }
  const BallAt* shown = measuredBall_ ? ballIn(balls_, *measuredBall_) : nullptr;
  if (shown != nullptr) paintMeasures(painter, shown->position, measured(), mapping(), inks(), numbers_);
  if (hasFocus()) {
    painter.setPen(QPen(inks().accent, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
  }
}

}  // namespace ferrule
