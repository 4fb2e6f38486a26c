// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/film_view.h"

#include <QPainter>
#include <cmath>

#include "app/picture/ball_painter.h"
#include "app/picture/shot_painter.h"

namespace ferrule {

FilmView::FilmView(QWidget* parent) : PictureView(parent) {
  setObjectName(QStringLiteral("filmView"));
  setAccessibleName(tr("Film"));
}

void FilmView::setShot(std::shared_ptr<const StoredShot> shot) {
  shot_ = std::move(shot);
  ballsNow_ = shot_ ? ballsAt(*shot_, picture_.time_s) : std::vector<BallNow>();
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

void FilmView::clearPicture() {
  picture_ = {};
  update();
}

QSizeF FilmView::contentSize() const {
  return picture_.picture.size();
}

std::optional<QPointF> FilmView::screenFromTable(TablePoint point) const {
  if (!rig_ || !hasPicture()) return std::nullopt;
  const auto at = imageFromTable(*rig_, {point.x, point.y, balls_.radius_m()});
  if (!at) return std::nullopt;
  const QRectF content = contentOnScreen();
  const QSizeF size = picture_.picture.size();
  // The rig's points count pixel centres from 0; the picture's edge lies half a pixel outside the first centre.
  return QPointF(content.left() + (at->x + 0.5) / size.width() * content.width(),
                 content.top() + (at->y + 0.5) / size.height() * content.height());
}

double FilmView::scaleAt(TablePoint point) const {
  constexpr double kStep_m = 0.01;
  const auto here = screenFromTable(point);
  const auto aside = screenFromTable(point + TableVector{kStep_m, 0.0});
  if (!here || !aside) return 0.0;
  return std::hypot(aside->x() - here->x(), aside->y() - here->y()) / kStep_m;
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

void FilmView::paintEvent(QPaintEvent*) {
  if (!hasPicture()) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawImage(contentOnScreen(), picture_.picture);
  if (!shot_ || !rig_) return;
  painter.setClipRect(contentOnScreen());
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
