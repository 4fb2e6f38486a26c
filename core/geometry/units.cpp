// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/units.h"

#include <cmath>
#include <numbers>

namespace ferrule {

double radiansFromDegrees(double angle_deg) {
  return angle_deg * std::numbers::pi / 180.0;
}

double degreesFromRadians(double angle_rad) {
  return angle_rad * 180.0 / std::numbers::pi;
}

double wrapAngle(double angle_rad) {
  const double wrapped = std::remainder(angle_rad, 2.0 * std::numbers::pi);
  return wrapped == -std::numbers::pi ? std::numbers::pi : wrapped;
}

}  // namespace ferrule
