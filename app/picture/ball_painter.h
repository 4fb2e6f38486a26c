// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "app/window/inks.h"
#include "core/table/ball_set.h"

namespace ferrule {

struct BallLook {
  bool lit = false;  ///< pointed at, here or in the other picture
  bool seen = true;  ///< false: predicted while hidden, drawn faint with a dashed edge
};

/// Draws one ball seen from above, softly shaded, with number and stripe where there is room. radius in px.
void paintBall(QPainter& painter, const BallSet& balls, BallName ball, const QPointF& centre, double radius,
               const BallLook& look, const Inks& inks);
/// The ring of a lit or found ball, for a picture that shows the ball itself; dashed where it was not seen but
/// predicted.
void paintRing(QPainter& painter, const QPointF& centre, double radius, const Inks& inks, bool seen = true);

}  // namespace ferrule
