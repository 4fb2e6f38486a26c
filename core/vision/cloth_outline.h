// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <opencv2/core/mat.hpp>
#include <optional>

#include "core/geometry/frames.h"

namespace ferrule {

/// The border of a table's cloth as a picture shows it, found by the cloth's colour alone: no rig is needed, so that a
/// wrong one cannot mislead it. The cloth covers the cushions, so the border is the cushions' back edge, cut by the
/// pockets; each side is a parabola, since lenses bend lines.
///
/// Assumes one table, seen from above, that fills the middle of the picture and whose cloth differs in colour from its
/// rails. Good to about a centimetre on the table; what needs more follows edges from here.
class ClothOutline {
 public:
  /// picture: 8-bit BGR. Nothing where no four-sided cloth fills a good part of the picture.
  [[nodiscard]] static std::optional<ClothOutline> find(const cv::Mat& picture);

  /// A place between the four sides: (0, 0) and (1, 1) are opposite corners, u runs along the longer sides, v is a
  /// quarter turn from u as the picture's y is from its x. A Coons patch, so that it is right on the border and smooth
  /// within; u and v may pass the border a little. Source: Coons 1967.
  [[nodiscard]] ImagePoint at(double u, double v) const;

 private:
  /// across = c[0] + c[1] along + c[2] along^2, in the box's axes.
  using Side = std::array<double, 3>;
  [[nodiscard]] bool meet();

  ImagePoint centre_;
  ImageVector axis_;             ///< unit, along the longer sides
  std::array<Side, 4> sides_{};  ///< v = 0, v = 1 (along u), u = 0, u = 1 (along v)
  /// In the box's axes: (u, v) = (0, 0), (1, 0), (0, 1), (1, 1).
  std::array<ImageVector, 4> corners_{};
};

}  // namespace ferrule
