// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/table/ball.h"

namespace ferrule {

/// A colour as an sRGB triple, 0 to 255.
struct BallColour {
  int red = 0;
  int green = 0;
  int blue = 0;

  bool operator==(const BallColour&) const = default;
};

/// The balls of one set: all of one size; each with the colour of its pattern.
struct BallSet {
  double diameter_m = 0.05715;  ///< 57.15 +- 0.127 mm. Source: world equipment specification, balls
  double mass_kg = 0.170;       ///< 156 to 170 g. Source: world equipment specification, balls
  std::array<BallColour, BallName::kCount> colours{};

  [[nodiscard]] double radius_m() const { return diameter_m / 2.0; }
  bool operator==(const BallSet&) const = default;
};

/// The pool set of the world pattern: 1 and 9 yellow, 2 and 10 blue, 3 and 11 red, 4 and 12 purple, 5 and 13 orange,
/// 6 and 14 green, 7 and 15 maroon, 8 black. Which colour a number has: common practice, no source; the sRGB values are
/// ours and a starting point only, since film colours depend on lamps and camera.
[[nodiscard]] BallSet poolBalls();

}  // namespace ferrule
