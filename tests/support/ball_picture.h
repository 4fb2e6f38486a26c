// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <span>

#include "core/camera/rig.h"
#include "core/camera/silhouette.h"

namespace ferrule {

/// A pinhole camera two metres above the middle of a table, looking straight down.
[[nodiscard]] Rig overheadRig();

/// How one ball is drawn.
struct DrawnBall {
  TablePoint position;
  cv::Vec3d colour;     ///< B, G, R
  double patch = 0.0;   ///< radius of a white number patch on its top, in ball radii
  TableVector streak;   ///< drawn while it moves this far, with position in the middle
  double shadow = 0.0;  ///< how much of the light a soft shadow beside it takes, 0 to 1
};

/// A picture of cloth with balls on it, averaged over 5 x 5 points a pixel; the ball's rim is darker than its top.
[[nodiscard]] cv::Mat drawBalls(const Rig& rig, cv::Vec3d cloth, std::span<const DrawnBall> balls, double radius_m);

}  // namespace ferrule
