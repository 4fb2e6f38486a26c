// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/table.h"

namespace ferrule {

/// Rings about a ball on the table, at the heights that a cue has there.
struct Rings {
  TablePoint ball;
  double radius_m = 0.0;  ///< of the ball
  double nearest_m = 0.0;
  double farthest_m = 0.0;
  double step_m = 0.0;
  double from_rad = 0.0;
  double until_rad = 0.0;
  double angleStep_rad = 0.0;
};

/// Height of a cue's axis over the cloth at a distance from the ball's centre: at the middle of the ball, and rising
/// with the elevation.
[[nodiscard]] double shaftHeight(double radius_m, double distance_m, double elevation_rad);

/// Where a ring passes something narrow that is no cloth.
struct RingCut {
  double distance_m = 0.0;  ///< of the ring
  double angle_rad = 0.0;   ///< of the cut's middle
  double width_m = 0.0;
  ImagePoint middle;
};

/// The cloth's colour about a ball: median over the rings; nothing where the picture shows too little of it.
[[nodiscard]] std::optional<Eigen::Vector3d> clothAbout(const Rig& rig, const Table& table, const cv::Mat& picture,
                                                        const Rings& rings);

/// Every cut of a shaft's width, ring by ring from the ball outwards. What differs from the cloth by brightness alone
/// is shadow. Edges lie where the difference passes half of what it is inside.
[[nodiscard]] std::vector<RingCut> ringCuts(const Rig& rig, const Table& table, const cv::Mat& picture,
                                            const Rings& rings, const Eigen::Vector3d& cloth);

}  // namespace ferrule
