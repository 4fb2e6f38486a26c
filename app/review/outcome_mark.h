// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "core/table/shot.h"

namespace ferrule {

/// Where a result stands on a time line: above it, below it, or on neither side.
enum class MarkSide { Above, Below };

/// Made shots and breaks stand above; misses, scratches and fouls below; safeties above as an open square.
[[nodiscard]] MarkSide sideOf(Outcome outcome);

/// Draws the mark of a result; shape alone tells it: made a filled disc, missed an open ring, safety an open square,
/// scratch a cross in a ring, foul a cross, break a filled triangle. size: the mark's width, px.
void paintOutcome(QPainter& painter, Outcome outcome, const QPointF& centre, double size, const QColor& colour);

}  // namespace ferrule
