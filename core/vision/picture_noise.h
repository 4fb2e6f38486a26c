// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>

namespace ferrule {

/// The standard deviation of what a sensor adds to each pixel by itself, grey levels; the median of the channels.
/// Cloth, wood and edges hardly count: they look alike from one pixel to the next, and the median leaves them out.
/// Noise that a film's compression has smoothed away counts for nothing. picture: 8-bit BGR.
/// Source: Immerkaer, Computer Vision and Image Understanding 64 (1996) 300, with a median for the mean.
[[nodiscard]] double sensorNoiseOf(const cv::Mat& picture);

/// Takes a sensor's noise out of pictures that have more of it than a ball's edge bears.
class NoiseSmoother {
 public:
  /// The picture itself where it is quiet, else a smoothed one. Follows the film's noise slowly, so that a film is
  /// smoothed throughout or not at all.
  [[nodiscard]] cv::Mat quiet(const cv::Mat& picture);

 private:
  double noise_ = -1.0;  ///< below 0: none seen yet
  bool smooths_ = false;
  long images_ = 0;
};

}  // namespace ferrule
