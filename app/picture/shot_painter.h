// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <functional>
#include <optional>

#include "app/window/inks.h"
#include "core/record/record_values.h"

namespace ferrule {

/// Where the centre of a ball that lies on the cloth at a table point is drawn; nothing outside the picture's reach.
using ScreenFromTable = std::function<std::optional<QPointF>(TablePoint)>;

/// Draws what the balls of one shot did, over a plan or over a film: ways as solid warm lines with a thin casing and,
/// where it is wider than the line, the band of their 95 % uncertainty; contacts as filled dots; hidden stretches
/// dotted; rest places as filled rings of the ball's size.
///
/// scaleAt: px a metre around a table point.
void paintShot(QPainter& painter, const StoredShot& shot, const ScreenFromTable& screenFromTable,
               const std::function<double(TablePoint)>& scaleAt, double ballRadius_m, std::optional<BallName> lit,
               const Inks& inks);

}  // namespace ferrule
