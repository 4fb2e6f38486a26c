// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/vision/ball_track.h"

namespace ferrule {

/// Whether what a new track shows passes for a ball that has no place in the picture yet: seen long enough, round
/// enough, and coloured like a ball whose name is free. opening: the film's first second, in which every ball is new.
[[nodiscard]] bool passesForBall(const BallTrack& fresh, std::span<const BallTrack> tracks, double time_s,
                                 bool opening);

/// The ball that a new track must be, if one is covered or lost from sight whose name fits it far better than any free
/// name, and better than those of the balls that are down: it left its place unseen. Null when there is none.
[[nodiscard]] BallTrack* sameBallAs(const BallTrack& fresh, std::span<BallTrack> tracks);

}  // namespace ferrule
