// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QPolygonF>
#include <QSizeF>
#include <vector>

#include "core/geometry/frames.h"

class QPainter;

namespace ferrule {

/// Side of the loupe's square.
inline constexpr double kLoupe_px = 190.0;

/// Where the loupe stands: beside a place of the widget, to its right and below it where there is room, so that it
/// never covers what is being placed.
[[nodiscard]] QRectF loupeBeside(QPointF place, QSizeF room);

/// The picture's pixels about a place, so many times enlarged, with a cross at it and a line through other places (px
/// of the picture).
void paintLoupe(QPainter& painter, const QRectF& frame, const QImage& picture, ImagePoint at, double magnified,
                const std::vector<ImagePoint>& line);

}  // namespace ferrule
