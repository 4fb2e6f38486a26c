// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule {

[[nodiscard]] double radiansFromDegrees(double angle_deg);
[[nodiscard]] double degreesFromRadians(double angle_rad);
/// The same direction in (-pi, pi].
[[nodiscard]] double wrapAngle(double angle_rad);
/// Millimetres live in files and on screens only.
[[nodiscard]] constexpr double metresFromMillimetres(double length_mm) {
  return length_mm / 1000.0;
}
[[nodiscard]] constexpr double millimetresFromMetres(double length_m) {
  return length_m * 1000.0;
}

}  // namespace ferrule
