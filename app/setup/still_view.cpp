// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/still_view.h"

#include <QPainter>
#include <algorithm>
#include <utility>

#include "app/window/inks.h"

namespace ferrule {

StillView::StillView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("stillView"));
  setAccessibleName(tr("What the camera sees of the board"));
  setMinimumSize(320, 180);
}

void StillView::setImage(const QImage& picture, ImageSize size, std::vector<BoardCorner> corners, bool good) {
  picture_ = picture;
  size_ = size;
  corners_ = std::move(corners);
  good_ = good;
  update();
}

void StillView::setTaken(std::vector<BoardView> views) {
  taken_ = std::move(views);
  update();
}

void StillView::clear() {
  picture_ = {};
  corners_.clear();
  update();
}

void StillView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  const Inks inks = inksFor(palette());
  if (picture_.isNull() || size_.width <= 0 || size_.height <= 0) {
    painter.fillRect(rect(), inks.fill);
    return;
  }
  const double scale = std::min(1.0 * width() / size_.width, 1.0 * height() / size_.height);
  const QRectF frame(0.0, 0.0, size_.width * scale, size_.height * scale);
  painter.drawImage(frame, picture_);
  const auto at = [&](ImagePoint p) { return QPointF((p.x + 0.5) * scale, (p.y + 0.5) * scale); };
  // Small dots for what is taken, rings for what is seen now: the shape tells them apart, too.
  painter.setPen(Qt::NoPen);
  painter.setBrush(inks.suggested);
  for (const BoardView& view : taken_) {
    if (view.size != size_) continue;
    for (const BoardCorner& corner : view.corners)
      painter.drawEllipse(at(corner.pixel), 1.5, 1.5);
  }
  painter.setBrush(Qt::NoBrush);
  for (const auto& [ink, width] :
       {std::pair{QColor(Qt::black), 3.0}, std::pair{good_ ? inks.taken : inks.casing, 1.5}}) {
    painter.setPen(QPen(ink, width, good_ ? Qt::SolidLine : Qt::DotLine));
    for (const BoardCorner& corner : corners_)
      painter.drawEllipse(at(corner.pixel), 4.0, 4.0);
  }
}

}  // namespace ferrule
