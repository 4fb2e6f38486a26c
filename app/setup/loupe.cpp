// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/loupe.h"

#include <QPainter>
#include <algorithm>
#include <utility>

namespace ferrule {

namespace {

constexpr double kBeside_px = 28.0;

}  // namespace

QRectF loupeBeside(QPointF place, QSizeF room) {
  const auto beside = [](double at, double most) {
    const double after = at + kBeside_px;
    if (after + kLoupe_px <= most) return after;
    // Before it, and where that is too narrow as well, as far as the widget reaches.
    return std::max(0.0, std::min(at - kBeside_px - kLoupe_px, most - kLoupe_px));
  };
  return {beside(place.x(), room.width()), beside(place.y(), room.height()), kLoupe_px, kLoupe_px};
}

void paintLoupe(QPainter& painter, const QRectF& frame, const QImage& picture, ImagePoint at, double magnified,
                const std::vector<ImagePoint>& line) {
  const double span = kLoupe_px / magnified;
  painter.save();
  painter.setClipRect(frame);
  painter.fillRect(frame, Qt::black);
  painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
  // Whole numbers are the middles of pixels.
  painter.drawImage(frame, picture, QRectF(at.x + 0.5 - 0.5 * span, at.y + 0.5 - 0.5 * span, span, span));
  painter.setRenderHint(QPainter::Antialiasing);
  QPolygonF enlarged;
  for (const ImagePoint& place : line)
    enlarged << frame.center() + QPointF(place.x - at.x, place.y - at.y) * magnified;
  const QPointF middle = frame.center();
  for (const auto& [ink, width] : {std::pair{Qt::black, 3.0}, std::pair{Qt::white, 1.2}}) {
    painter.setPen(QPen(ink, width));
    painter.drawPolyline(enlarged);
    painter.drawLine(middle - QPointF(14.0, 0.0), middle + QPointF(14.0, 0.0));
    painter.drawLine(middle - QPointF(0.0, 14.0), middle + QPointF(0.0, 14.0));
  }
  painter.restore();
  painter.setBrush(Qt::NoBrush);
  for (const auto& [ink, width] : {std::pair{Qt::black, 3.0}, std::pair{Qt::white, 1.0}}) {
    painter.setPen(QPen(ink, width));
    painter.drawRect(frame);
  }
}

}  // namespace ferrule
