// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/squareness.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

std::optional<Squareness> squarenessOf(const TapeMeasure& tape) {
  const double least_m = std::min({tape.length_m, tape.width_m, tape.diagonalA_m, tape.diagonalB_m});
  if (!(least_m > 0.0)) return std::nullopt;
  const double a = tape.diagonalA_m * tape.diagonalA_m;
  const double b = tape.diagonalB_m * tape.diagonalB_m;
  const double sine = (a - b) / (4.0 * tape.length_m * tape.width_m);
  if (!(std::abs(sine) < 1.0)) return std::nullopt;
  Squareness result;
  result.angle_rad = std::asin(sine);
  result.skew_m = tape.length_m * sine;
  result.misread_m = std::sqrt(0.5 * (a + b)) - std::hypot(tape.length_m, tape.width_m);
  return result;
}

}  // namespace ferrule
