// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <opencv2/core/mat.hpp>
#include <vector>

#include "core/camera/silhouette.h"

namespace ferrule {

/// How far a colour is from cloth, grey levels: cloth counts as cloth at any brightness from a deep shadow's to a
/// lamp's, so that shadows are cloth. Says nothing of what has the cloth's own colour.
class ClothDistance {
 public:
  /// cloth: B, G, R, grey levels.
  explicit ClothDistance(const Eigen::Vector3f& cloth)
      : brightness_(std::max(1.0F, cloth.norm())), direction_(cloth / brightness_) {}

  /// Of the cloth, grey levels.
  [[nodiscard]] float brightness() const { return brightness_; }
  /// Of a well lit film's contrasts, what is left in this light, up to 1: in a dark room a ball differs from the cloth
  /// by as much less as both are darker.
  [[nodiscard]] float exposure() const { return exposureOf(brightness_); }
  [[nodiscard]] static float exposureOf(float clothBrightness) {
    constexpr float kWellLit =
        100.0F;                     // a cloth's in the darker corners of a well lit table; common practice, no source
    constexpr float kLeast = 0.3F;  // below it the steps between grey levels are as large as what is looked for
    return std::clamp(clothBrightness / kWellLit, kLeast, 1.0F);
  }
  [[nodiscard]] float operator()(const Eigen::Vector3f& seen) const {
    constexpr float kDarkest = 0.6F;  // of the cloth's brightness, in shadow and under a lamp
    constexpr float kBrightest = 1.25F;
    const float along = seen.dot(direction_);
    const float beyond = std::max({0.0F, along - kBrightest * brightness_, kDarkest * brightness_ - along});
    return std::sqrt((seen - along * direction_).squaredNorm() + beyond * beyond);
  }

 private:
  float brightness_;
  Eigen::Vector3f direction_;
};

/// What in a picture around a ball is not cloth. A ball's number, its stripe and the border of its shadow have edges
/// too, but something foreign, or cloth, on both sides of them; the ball's outline alone parts the one from the other.
class NotCloth {
 public:
  /// picture: 8-bit BGR around the ball.
  NotCloth(const cv::Mat& picture, const ClothDistance& distance);

  /// Its mean just inside an outline less that just outside of it, -1 to 1; 1 for a ball alone on the cloth. Places
  /// inside one of others, and outside the picture, are left out.
  [[nodiscard]] double contrast(const Silhouette& outline, const std::vector<Silhouette>& others) const;

 private:
  cv::Mat foreign_;  ///< 8-bit: 255 for what is surely no cloth
};

}  // namespace ferrule
