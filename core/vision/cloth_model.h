// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <opencv2/core/mat.hpp>

#include "core/camera/rig.h"
#include "core/table/table.h"

namespace ferrule {

/// A picture shrunk by a whole factor, so that a ball's radius is 6 to 9 px; search happens there, measuring in the
/// full picture. Point p of the full picture is (p + 0.5) / factor - 0.5 of the small one.
struct SmallScale {
  int factor = 2;

  [[nodiscard]] ImagePoint toSmall(ImagePoint full) const {
    return {(full.x + 0.5) / factor - 0.5, (full.y + 0.5) / factor - 0.5};
  }
  [[nodiscard]] ImagePoint toFull(ImagePoint small) const {
    return {(small.x + 0.5) * factor - 0.5, (small.y + 0.5) * factor - 0.5};
  }
};

/// The factor that makes a ball's radius 6 to 9 px in the middle of the table.
[[nodiscard]] SmallScale smallScaleFor(const Rig& rig, double radius_m);

/// What the empty cloth looks like, learnt from the film itself: a smooth surface through the colours of the cloth at
/// first, then pixel by pixel wherever nothing lies. A pixel that differs much is never learnt, so a ball that rests
/// for minutes does not become cloth.
class ClothModel {
 public:
  ClothModel(const Rig& rig, const Table& table, SmallScale scale);

  /// Takes the first small picture; balls and people on it are outvoted by the cloth.
  void start(const cv::Mat& small);
  /// How far each pixel of the playing surface is from bare cloth: the largest channel difference, grey levels; 0 off
  /// the surface.
  [[nodiscard]] cv::Mat difference(const cv::Mat& small) const;
  /// Follows slow changes of light. occupied: non-zero where something lies.
  void learn(const cv::Mat& small, const cv::Mat& occupied);

  /// The cloth's colour at a place of the small picture, B, G, R, grey levels; the nearest place inside it.
  [[nodiscard]] Eigen::Vector3f colourAt(ImagePoint small) const;
  [[nodiscard]] const cv::Mat& surface() const { return surface_; }

 private:
  cv::Mat surface_;     ///< 255 on the playing surface
  cv::Mat cloth_;       ///< 8-bit BGR
  cv::Mat clothExact_;  ///< float BGR
};

}  // namespace ferrule
