// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QPolygonF>
#include <QSizeF>
#include <vector>

#include "core/geometry/frames.h"

class QPainter;

namespace ferrule {

/// Side of the loupe's square, and how many times larger than the picture's pixels it shows.
inline constexpr double kLoupe_px = 190.0;
inline constexpr double kMagnified = 8.0;

/// Where the loupe stands: beside a place of the widget, to its right and below it where there is room, so that it
/// never covers what is being placed.
[[nodiscard]] QRectF loupeBeside(QPointF place, QSizeF room);

/// The picture's pixels about a place, enlarged, with a cross at it and a line through other places (px of the
/// picture).
void paintLoupe(QPainter& painter, const QRectF& frame, const QImage& picture, ImagePoint at,
                const std::vector<ImagePoint>& line);

}  // namespace ferrule
