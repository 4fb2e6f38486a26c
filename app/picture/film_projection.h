// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <optional>

#include "core/camera/rig.h"

namespace ferrule {

/// Where balls on the table lie in a picture of the film that is drawn into a rectangle.
struct FilmProjection {
  const Rig& rig;
  QRectF content;  ///< where the whole picture is drawn
  QSizeF picture;  ///< its size in pixels
  double ballRadius_m = 0.0;

  /// The centre of a ball that lies at a table point; nothing outside the camera's reach.
  [[nodiscard]] std::optional<QPointF> screenFromTable(TablePoint point) const;
  /// Units of the rectangle a metre there; 0 outside the camera's reach.
  [[nodiscard]] double scaleAt(TablePoint point) const;
};

}  // namespace ferrule
