// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/film_view.h"

#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "app/picture/ball_painter.h"
#include "app/picture/shot_painter.h"
#include "app/words/trade_words.h"

namespace ferrule {

FilmView::FilmView(QWidget* parent) : PictureView(parent) {
  setObjectName(QStringLiteral("filmView"));
  setAccessibleName(tr("Film"));
}

void FilmView::setShot(std::shared_ptr<const StoredShot> shot) {
  shot_ = std::move(shot);
  ballsNow_ = shot_ ? ballsAt(*shot_, picture_.time_s) : std::vector<BallNow>();
  ringsAll_ = false;
  update();
}

void FilmView::setRig(const std::optional<Rig>& rig) {
  rig_ = rig;
  update();
}

void FilmView::setBallSet(const BallSet& balls) {
  balls_ = balls;
  update();
}

void FilmView::setPicture(const FilmPicture& picture) {
  picture_ = picture;
  ballsNow_ = shot_ ? ballsAt(*shot_, picture_.time_s) : std::vector<BallNow>();
  update();
}

void FilmView::setSeen(const FilmPicture& picture, std::vector<BallNow> found) {
  picture_ = picture;
  shot_.reset();
  ballsNow_ = std::move(found);
  ringsAll_ = true;
  update();
}

void FilmView::clearPicture() {
  picture_ = {};
  ballsNow_.clear();
  update();
}

QSizeF FilmView::contentSize() const {
  return picture_.picture.size();
}

std::optional<QPointF> FilmView::screenFromTable(TablePoint point) const {
  if (!rig_ || !hasPicture()) return std::nullopt;
  return projection().screenFromTable(point);
}

double FilmView::scaleAt(TablePoint point) const {
  return rig_ && hasPicture() ? projection().scaleAt(point) : 0.0;
}

FilmProjection FilmView::projection() const {
  return {*rig_, contentOnScreen(), picture_.picture.size(), balls_.radius_m()};
}

std::optional<BallName> FilmView::ballUnder(const QPointF& place) const {
  for (const BallNow& ball : ballsNow_) {
    const auto at = screenFromTable(ball.position);
    if (!at) continue;
    const double away = std::hypot(at->x() - place.x(), at->y() - place.y());
    if (away <= balls_.radius_m() * scaleAt(ball.position)) return ball.ball;
  }
  return std::nullopt;
}

void FilmView::paintFound(QPainter& painter) const {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setFont(scaled(font(), 0.9, true));
  for (const BallNow& ball : ballsNow_) {
    const auto at = screenFromTable(ball.position);
    if (!at) continue;
    const double radius_px = balls_.radius_m() * scaleAt(ball.position);
    paintRing(painter, *at, radius_px, inks(), ball.seen);
    // Beside the ring, with an edge of its own: it must be read on cloth, wood and balls.
    QPainterPath name;
    name.addText(*at + QPointF(radius_px + 7.0, painter.fontMetrics().ascent() / 2.0), painter.font(),
                 ballShort(ball.ball));
    painter.setPen(QPen(inks().casing, 3.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(name);
    painter.fillPath(name, Qt::white);
  }
}

void FilmView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  drawFor(painter);
}

void FilmView::drawFor(QPainter& painter) const {
  if (!hasPicture()) return;
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawImage(contentOnScreen(), picture_.picture);
  if (!rig_) return;
  painter.setClipRect(contentOnScreen());
  if (ringsAll_) paintFound(painter);
  if (!shot_) return;
  paintShot(
      painter, *shot_, [this](TablePoint point) { return screenFromTable(point); },
      [this](TablePoint point) { return scaleAt(point); }, balls_.radius_m(), lit(), inks());
  for (const BallNow& ball : ballsNow_) {
    if (ball.ball != lit()) continue;
    if (const auto at = screenFromTable(ball.position)) {
      paintRing(painter, *at, balls_.radius_m() * scaleAt(ball.position), inks());
    }
  }
}

}  // namespace ferrule
