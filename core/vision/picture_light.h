// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>

namespace ferrule {

/// How bright an image is, 0 to 255.
struct PictureLight {
  double middle = 0.0;      ///< the median
  double bright = 0.0;      ///< what 98 of 100 pixels stay below: cushions' edges, balls
  double burntShare = 0.0;  ///< of pixels that are white in every channel: nothing is seen in them

  bool operator==(const PictureLight&) const = default;
};

enum class LightFault {
  None,
  TooDark,    ///< balls hardly stand out of the noise
  TooBright,  ///< more is burnt out than the lamps' own highlights
};

/// picture: 8-bit BGR; every fourth pixel of every fourth row is looked at.
[[nodiscard]] PictureLight lightOf(const cv::Mat& picture);
/// The limits are common practice, no source.
[[nodiscard]] LightFault faultOf(const PictureLight& light);

/// So long an exposure that a ball at 4 m/s crosses more than its own radius: it has no outline left to fit.
/// exposure_s: 0 when not known. The speed is common practice, no source.
[[nodiscard]] bool smearsFastBalls(double exposure_s, double ballRadius_m);

}  // namespace ferrule
