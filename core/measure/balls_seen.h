// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/table/track.h"

namespace ferrule {

/// Where the balls of one image lie, in the order of their names.
[[nodiscard]] inline Position positionOf(const ImageReading& reading) {
  Position balls;
  for (const BallSample& ball : reading.balls)
    balls.push_back({ball.ball, ball.position});
  return balls;
}

}  // namespace ferrule
