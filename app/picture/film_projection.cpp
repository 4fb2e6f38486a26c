// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/picture/film_projection.h"

#include <cmath>

namespace ferrule {

std::optional<QPointF> FilmProjection::screenFromTable(TablePoint point) const {
  const auto at = imageFromTable(rig, {point.x, point.y, ballRadius_m});
  if (!at) return std::nullopt;
  // The rig's points count pixel centres from 0; the picture's edge lies half a pixel outside the first centre.
  return QPointF(content.left() + (at->x + 0.5) / picture.width() * content.width(),
                 content.top() + (at->y + 0.5) / picture.height() * content.height());
}

double FilmProjection::scaleAt(TablePoint point) const {
  constexpr double kStep_m = 0.01;
  const auto here = screenFromTable(point);
  const auto aside = screenFromTable(point + TableVector{kStep_m, 0.0});
  if (!here || !aside) return 0.0;
  return std::hypot(aside->x() - here->x(), aside->y() - here->y()) / kStep_m;
}

}  // namespace ferrule
