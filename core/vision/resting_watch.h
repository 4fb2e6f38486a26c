// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vision/ball_scene.h"

namespace ferrule {

/// Looks at a resting ball's place: it lies there still, or has begun to move, or something is in the way.
void watchResting(BallScene& scene, BallTrack& track);

}  // namespace ferrule
