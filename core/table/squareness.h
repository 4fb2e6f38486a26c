// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

namespace ferrule {

/// What a tape measure says of a playing surface, nose to nose, m.
struct TapeMeasure {
  double length_m = 0.0;
  double width_m = 0.0;
  double diagonalA_m = 0.0;  ///< from the head's right corner to the foot's left one
  double diagonalB_m = 0.0;  ///< from the head's left corner to the foot's right one

  bool operator==(const TapeMeasure&) const = default;
};

/// How far a table is from a rectangle.
struct Squareness {
  /// How far one end is pushed along against the other, m: a ball put by the head's corners lies as far off at the
  /// foot.
  /// + : diagonal A is the longer one, the foot is pushed to the left.
  double skew_m = 0.0;
  double angle_rad = 0.0;  ///< by which the corners miss a right angle
  /// What the diagonals, taken together, are longer than length and width allow, m: a misread length, not a skew.
  double misread_m = 0.0;

  bool operator==(const Squareness&) const = default;
};

/// Of a parallelogram: a squared minus b squared is four times length times width times the sine of the angle (law of
/// cosines), a squared plus b squared twice length squared plus twice width squared (parallelogram law).
/// Source: Euclid, Elements II, 12 and 13. Nothing when a length is not above zero or the diagonals close no
/// parallelogram.
[[nodiscard]] std::optional<Squareness> squarenessOf(const TapeMeasure& tape);

}  // namespace ferrule
