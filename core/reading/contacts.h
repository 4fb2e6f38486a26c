// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/reading/knots.h"

namespace ferrule {

/// Two balls touched.
struct Contact {
  double time_s = 0.0;
  double timeUncertainty_s = 0.0;
  std::size_t first = 0;   ///< index of the ball that came, in the motions
  std::size_t second = 0;  ///< index of the ball that was met
  /// Index of the knot that the contact explains in each ball; nothing when that ball's jump was too small to see.
  std::optional<std::size_t> firstKnot;
  std::optional<std::size_t> secondKnot;
  TablePoint firstPosition;
  TablePoint secondPosition;
  TableVector line;  ///< unit vector from the first to the second centre
};

/// The contacts of a shot, in time order, from the jumps of the velocities: at a contact the centres are two radii
/// apart, and each ball's jump lies along the line of centres (friction between balls turns it by a few degrees).
/// Times come from the paths before and after, so contacts closer than two images keep their order as far as the paths
/// tell. Balls of a rack that start together are linked to the neighbour that pushed them.
[[nodiscard]] std::vector<Contact> contactsOf(const std::vector<BallMotion>& motions, double radius_m,
                                              double imageInterval_s);

}  // namespace ferrule
