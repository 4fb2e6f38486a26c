// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <span>

#include "core/camera/silhouette.h"

namespace ferrule {

/// A neighbour's outline; rays that end on it say nothing about the cloth's edge.
using Neighbours = std::span<const Silhouette>;

struct OutlineFitOptions {
  double reach_px = 5.0;                 ///< how far off the start may be
  ImageVector blur;                      ///< streak drawn during the exposure, px; zero for a ball at rest
  std::optional<Eigen::Vector3f> cloth;  ///< B, G, R around the ball, grey levels; nothing: unknown
};

/// The best place of a known outline in the picture.
struct OutlineFit {
  ImageVector shift;                    ///< from the start, px
  double support = 0.0;                 ///< share of all rays whose edge agrees with the outline
  double agreement = 0.0;               ///< share of the rays with an edge that agree
  double rms_px = 0.0;                  ///< of the agreeing rays
  double standardUncertainty_px = 0.0;  ///< of each coordinate of shift
  double radiusScale = 1.0;             ///< found radius over expected radius
  bool usable = false;                  ///< enough agreeing rays all round to fix both coordinates
};

/// Looks along rays for the edge of a ball whose size is known and whose place is roughly known.
///
/// Each ray's edge is where the colour is half way between what lies just inside and just outside, so that neither a
/// shadow on the cloth nor the ball's pattern pulls it; the place is a robust least-squares fit (Tukey's biweight) of
/// shift and a common radius to the edges. With blur, the half-way point of a streak's ramp is the ball's edge at
/// mid-exposure as long as the streak is shorter than the ball.
/// picture: 8-bit BGR.
[[nodiscard]] OutlineFit fitOutline(const cv::Mat& picture, const Silhouette& start, Neighbours neighbours,
                                    const OutlineFitOptions& options);

}  // namespace ferrule
