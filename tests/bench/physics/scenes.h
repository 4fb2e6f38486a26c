// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/base/random.h"
#include "core/physics/strike.h"
#include "core/table/table.h"
#include "core/table/track.h"

namespace ferrule::bench {

/// A position and what is played from it.
struct Scene {
  Position before;
  Strike strike;
};

/// A shot of a game of eight-ball: eight balls where a break may leave them, one of them cut toward a pocket at 1
/// to 3.5 m/s with some side, follow or draw, and a cue that is raised by a few degrees, as cues are.
[[nodiscard]] Scene eightBallShot(const Table& table, Random& random);
/// The break of a full, tight rack from behind the head string at 8 to 10 m/s.
[[nodiscard]] Scene breakShot(const Table& table, Random& random);

/// Always the same ones.
[[nodiscard]] std::vector<Scene> eightBallShots(int count);
[[nodiscard]] std::vector<Scene> breakShots(int count);

}  // namespace ferrule::bench
