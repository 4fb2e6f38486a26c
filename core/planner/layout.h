// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/geometry/frames.h"
#include "core/planner/ball_mask.h"
#include "core/table/track.h"

namespace ferrule {

/// Where the balls lie, by number: a position that is asked for lines many times.
struct Layout {
  BallMask present;  ///< the cue ball included
  std::array<TablePoint, BallName::kCount> place{};

  [[nodiscard]] TablePoint at(BallName ball) const { return place[static_cast<std::size_t>(ball.number())]; }
};

[[nodiscard]] Layout layoutOf(const Position& balls);

/// How much room a line needs beside a ball's width so that a person calls it open. Common practice, no source.
inline constexpr double kClearance_m = 0.001;

/// Whether a ball's centre can go straight from one place to another past all balls but those left out: it stays a
/// ball's width and the clearance away from every other centre.
/// ballRadius_m: of all balls. leftOut: balls that are not in the way, such as those that move.
[[nodiscard]] bool isOpen(const Layout& layout, TablePoint from, TablePoint to, BallMask leftOut, double ballRadius_m,
                          double clearance_m = kClearance_m);

}  // namespace ferrule
