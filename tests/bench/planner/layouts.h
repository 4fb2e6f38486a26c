// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planner/situation.h"

namespace ferrule::bench {

/// An eight-ball position with this many object balls scattered at random, 8 among them; always the same for a seed.
[[nodiscard]] Situation randomEightBall(int objectBalls, std::uint64_t seed);

}  // namespace ferrule::bench
