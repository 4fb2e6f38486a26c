// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/table_editor.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMetaMethod>
#include <QMouseEvent>
#include <QPainter>

#include "app/picture/ball_painter.h"
#include "app/picture/plan_painter.h"
#include "app/window/spoken_role.h"
#include "core/table/ghost_ball.h"

namespace ferrule {

namespace {

/// How near a ball is let go of a spot, cushion or ball to be drawn there.
constexpr double kReach_px = 9.0;
constexpr double kNudge_m = 0.001;
constexpr double kFarNudge_m = 0.010;
/// A pocket is hit within this many halves of its mouth's width.
constexpr double kPocketReach = 1.3;
/// So many widths behind its mouth is still the pocket.
constexpr double kPocketDepth = 1.5;

bool isNudge(int key) {
  return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

bool isPage(int key) {
  return key == Qt::Key_PageUp || key == Qt::Key_PageDown;
}

}  // namespace

TableEditor::TableEditor(QWidget* parent) : PlanPicture(parent) {
  setObjectName(QStringLiteral("tableEditor"));
  speakAs(this, QAccessible::Graphic);
  setAccessibleName(tr("Table; tab chooses a ball, the arrow keys move it, page up and down choose its pocket"));
  setFocusPolicy(Qt::StrongFocus);
}

void TableEditor::setBalls(const Position& balls) {
  balls_ = balls;
  update();
}

void TableEditor::setAim(std::optional<BallName> ball, std::optional<PocketName> pocket) {
  chosen_ = ball;
  pocket_ = pocket;
  update();
}

void TableEditor::setPlan(const PlayedPlan* plan) {
  plan_ = plan != nullptr ? std::optional(*plan) : std::nullopt;
  update();
}

std::optional<BallName> TableEditor::ballUnder(const QPointF& place) const {
  return ballAmong(balls_, place);
}

std::optional<PocketName> TableEditor::pocketUnder(const QPointF& place) const {
  const TablePoint point = mapping().tableFromScreen(place);
  for (const Pocket& pocket : pockets(measured().table)) {
    if (distance(point, pocket.mouth) <= kPocketReach * pocket.mouth_m / 2.0) return pocket.name;
  }
  return std::nullopt;
}

std::optional<PocketName> TableEditor::pocketTaking(const QPointF& place) const {
  const TablePoint point = mapping().tableFromScreen(place);
  for (const Pocket& pocket : pockets(measured().table)) {
    const TableVector way = point - pocket.mouth;
    const double deep_m = dot(way, pocket.inward);
    const double beside_m = std::abs(cross(pocket.inward, way));
    const bool within = deep_m <= kPocketDepth * pocket.mouth_m && beside_m <= pocket.mouth_m / 2.0;
    if (within && deep_m >= measured().balls.radius_m()) return pocket.name;
  }
  return std::nullopt;
}

bool TableEditor::choosesPockets() const {
  return isSignalConnected(QMetaMethod::fromSignal(&TableEditor::pocketChosen));
}

void TableEditor::choosePocket(int step) {
  const auto all = static_cast<int>(kPocketNames.size());
  const int next = pocket_ ? (static_cast<int>(*pocket_) + step + all) % all : 0;
  emit pocketChosen(kPocketNames[static_cast<std::size_t>(next)]);
}

void TableEditor::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  const auto ball = event->button() == Qt::LeftButton ? ballUnder(event->position()) : std::nullopt;
  if (!ball) {
    const auto pocket = event->button() == Qt::LeftButton ? pocketUnder(event->position()) : std::nullopt;
    if (pocket) {
      emit pocketChosen(*pocket);
    } else {
      PictureView::mousePressEvent(event);
    }
    return;
  }
  drag_ = Drag{*ball, event->position(), ballIn(balls_, *ball)->position};
  emit ballChosen(ball);
}

void TableEditor::mouseMoveEvent(QMouseEvent* event) {
  if (!drag_) {
    PictureView::mouseMoveEvent(event);
    return;
  }
  const QPointF way = event->position() - drag_->from;
  if (!drag_->moved && way.manhattanLength() < QApplication::startDragDistance()) return;
  drag_->moved = true;
  drag_->place = mapping().tableFromScreen(event->position());
  update();
}

void TableEditor::mouseReleaseEvent(QMouseEvent* event) {
  if (!drag_) {
    PictureView::mouseReleaseEvent(event);
    return;
  }
  const Drag drag = *drag_;
  drag_.reset();
  update();
  if (!drag.moved) return;
  if (const auto pocket = pocketTaking(event->position())) {
    emit ballFell(drag.ball, *pocket);
  } else if (!mapping().outline(measured().table).contains(event->position())) {
    emit ballTaken(drag.ball);
  } else {
    emit ballPut(drag.ball, drag.place, kReach_px / mapping().scale());
  }
}

void TableEditor::mouseDoubleClickEvent(QMouseEvent* event) {
  // Pressing a ball twice is no wish to see the whole table.
  if (!ballUnder(event->position())) PictureView::mouseDoubleClickEvent(event);
}

bool TableEditor::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    // The window's keys for stepping through a film are the ones that move a ball here.
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (chosen_ &&
        (isNudge(key) || (isPage(key) && choosesPockets()) || key == Qt::Key_Delete || key == Qt::Key_Backspace)) {
      event->accept();
      return true;
    }
  }
  if (event->type() == QEvent::KeyPress) {
    const auto* press = static_cast<QKeyEvent*>(event);
    const bool back = press->key() == Qt::Key_Backtab;
    // Past the last ball the tab key goes on to the next widget.
    if ((press->key() == Qt::Key_Tab || back) && !balls_.empty()) {
      const BallName edge = back ? balls_.front().ball : balls_.back().ball;
      if (chosen_ != edge) {
        chooseNext(back ? -1 : 1);
        return true;
      }
      emit ballChosen(std::nullopt);
    }
  }
  return PlanPicture::event(event);
}

void TableEditor::chooseNext(int step) {
  const auto at = chosen_ ? std::ranges::find(balls_, *chosen_, &BallAt::ball) : balls_.end();
  if (at == balls_.end()) {
    emit ballChosen(step > 0 ? balls_.front().ball : balls_.back().ball);
  } else {
    emit ballChosen((at + step)->ball);
  }
}

void TableEditor::keyPressEvent(QKeyEvent* event) {
  const BallAt* ball = chosen_ ? ballIn(balls_, *chosen_) : nullptr;
  if (ball == nullptr) {
    event->ignore();
    return;
  }
  if (event->key() == Qt::Key_Delete || event->key() == Qt::Key_Backspace) {
    emit ballTaken(ball->ball);
    return;
  }
  if (isPage(event->key()) && choosesPockets()) {
    choosePocket(event->key() == Qt::Key_PageDown ? 1 : -1);
    return;
  }
  if (!isNudge(event->key())) {
    event->ignore();
    return;
  }
  const double step_px = (event->modifiers().testFlag(Qt::ShiftModifier) ? kFarNudge_m : kNudge_m) * mapping().scale();
  QPointF at = mapping().screenFromTable(ball->position);
  if (event->key() == Qt::Key_Left) at.rx() -= step_px;
  if (event->key() == Qt::Key_Right) at.rx() += step_px;
  if (event->key() == Qt::Key_Up) at.ry() -= step_px;
  if (event->key() == Qt::Key_Down) at.ry() += step_px;
  emit ballPut(ball->ball, mapping().tableFromScreen(at), 0.0);
}

/// The way to the pocket and the ghost ball that sends the ball there.
void TableEditor::paintAim(QPainter& painter) const {
  const BallAt* ball = chosen_ && !drag_ ? ballIn(balls_, *chosen_) : nullptr;
  if (ball == nullptr || !pocket_) return;
  const TablePoint mouth = pockets(measured().table)[static_cast<std::size_t>(*pocket_)].mouth;
  const TableVector way = mouth - ball->position;
  if (length(way) == 0.0) return;
  const double radius_m = measured().balls.radius_m();
  const QPointF ghost = mapping().screenFromTable(ghostBall(ball->position, way, radius_m));
  const auto line = [&](const QPointF& from, const QPointF& to) {
    painter.setPen(QPen(inks().casing, 3.6));
    painter.drawLine(from, to);
    painter.setPen(QPen(inks().suggested, 1.8, Qt::DashLine));
    painter.drawLine(from, to);
  };
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setBrush(Qt::NoBrush);
  line(mapping().screenFromTable(ball->position), mapping().screenFromTable(mouth));
  if (const BallAt* cue = ballIn(balls_, kCueBall)) line(mapping().screenFromTable(cue->position), ghost);
  painter.setPen(QPen(inks().casing, 3.0));
  painter.drawEllipse(ghost, radius_m * mapping().scale(), radius_m * mapping().scale());
  painter.setPen(QPen(inks().suggested, 1.4));
  painter.drawEllipse(ghost, radius_m * mapping().scale(), radius_m * mapping().scale());
}

void TableEditor::paintPlan(QPainter& painter) const {
  if (!plan_) return;
  paintPlannedWays(painter, plan_->ways, mapping(), inks());
  paintLeave(painter, plan_->ranked.chances.leave, measured().table, mapping(), inks());
  if (const auto& place = plan_->ranked.plan.cueBall) {
    paintBall(painter, measured().balls, kCueBall, mapping().screenFromTable(*place),
              measured().balls.radius_m() * mapping().scale(), {false, false}, inks());
  }
}

void TableEditor::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paintEmptyTable(painter);
  paintUnder(painter);
  paintPlan(painter);
  paintAim(painter);
  const double radius_px = measured().balls.radius_m() * mapping().scale();
  for (const BallAt& ball : balls_) {
    const bool dragged = drag_ && drag_->ball == ball.ball;
    const QPointF at = mapping().screenFromTable(dragged ? drag_->place : ball.position);
    paintBall(painter, measured().balls, ball.ball, at, radius_px,
              {ball.ball == lit() || ball.ball == chosen_, !dragged}, inks());
  }
  if (hasFocus()) {
    painter.setPen(QPen(inks().accent, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
  }
}

}  // namespace ferrule
