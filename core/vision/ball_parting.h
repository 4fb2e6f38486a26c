// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/table/track.h"

namespace ferrule {

/// Two balls on the cloth cannot be nearer than two radii. Moves balls that were placed a little too near to each other
/// apart, each in proportion to its variance, until none overlap: what the frozen balls of a rack know of each other
/// places those that show little cloth. Balls that overlap by more than a few millimetres are left alone: one of them
/// flies, or is not where it was read, and pushing would spoil the other.
/// radius_m: of every ball.
void partBalls(std::span<BallSample> balls, double radius_m);

}  // namespace ferrule
