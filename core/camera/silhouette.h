// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Dense>
#include <optional>

#include "core/camera/rig.h"
#include "core/geometry/frames.h"

namespace ferrule {

/// The outline that a ball lying on the cloth shows in the picture, as the affine image of a unit circle:
/// centre + shape * (cos t, sin t). A sphere's outline is the tangent cone's, a little off the image of its centre and
/// a little longer away from the camera's axis. Assumes that the lens is affine over one ball; wrong by less than 0.05
/// px for balls under 60 px.
struct Silhouette {
  ImagePoint centre;
  Eigen::Matrix2d shape = Eigen::Matrix2d::Identity();           ///< px
  Eigen::Matrix2d tableFromImage = Eigen::Matrix2d::Identity();  ///< m/px, how the ball's place follows the outline

  /// Mean radius, px.
  [[nodiscard]] double radius_px() const { return std::sqrt(std::abs(shape.determinant())); }
  /// A point of the ball's disc; rho 1 is the outline.
  [[nodiscard]] ImagePoint at(double cosine, double sine, double rho) const {
    return {centre.x + rho * (shape(0, 0) * cosine + shape(0, 1) * sine),
            centre.y + rho * (shape(1, 0) * cosine + shape(1, 1) * sine)};
  }
  /// The displacement on the table that belongs to one in the picture.
  [[nodiscard]] TableVector tableVector(ImageVector v) const {
    return {tableFromImage(0, 0) * v.x + tableFromImage(0, 1) * v.y,
            tableFromImage(1, 0) * v.x + tableFromImage(1, 1) * v.y};
  }
};

/// The outline of a ball of radius_m whose centre is above ball. Nothing where the rig sees nothing.
[[nodiscard]] std::optional<Silhouette> silhouetteOf(const Rig& rig, TablePoint ball, double radius_m);

}  // namespace ferrule
