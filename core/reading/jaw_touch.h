// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/reading/cushion_hits.h"
#include "core/reading/pocketing.h"

namespace ferrule {

/// The last moments of a ball that fell: jumps of its velocity in the jaws that its way over the cloth is too short to
/// show. A ball that meets a jaw is over the hole one or two images later, so the first images of the fall count too,
/// each trusted the less the longer it may have been falling.
///
/// whole: all measured points of the ball, those of the fall too. motion: what its points on the table tell; a jump
/// that is told there is not told again. Empty where the ball did not fall or the jaws were not met.
[[nodiscard]] std::vector<Knot> jawTouches(const MeasuredPath& whole, const BallEnd& end, const BallMotion& motion,
                                           const Table& table, double radius_m, double imageInterval_s);

}  // namespace ferrule
