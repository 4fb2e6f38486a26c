// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/geometry/frames.h"

namespace ferrule {

/// Where the cue ball's centre is when it meets a resting ball so as to send it this way, without throw: two radii
/// behind it. way: of any length but 0. Source: common practice, no source.
[[nodiscard]] inline TablePoint ghostBall(TablePoint object, TableVector way, double radius_m) {
  return object - 2.0 * radius_m * unit(way);
}

}  // namespace ferrule
