// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/vision/ball_scene.h"

namespace ferrule {

/// What a search brought: the tracks that still wait for their place in this image, and what they may be.
struct SearchResult {
  std::vector<std::size_t> open;  ///< places in the scene's tracks
  std::vector<BallCandidate> candidates;
};

/// Looks for the balls that are not placed yet: around where they can be by now, and every few images all over the
/// table, since balls are put down unannounced.
[[nodiscard]] SearchResult searchForBalls(BallScene& scene);

}  // namespace ferrule
