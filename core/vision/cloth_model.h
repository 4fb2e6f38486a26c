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
  /// Takes the light of the picture that is looked at next: lamps flicker, clouds pass, cameras expose and balance
  /// anew, and all of the cloth changes by the same factors. Without it the light is that of the first picture.
  /// picture: the full one.
  void meet(const cv::Mat& picture);
  /// The picture's light over that of the model, B, G, R.
  [[nodiscard]] const Eigen::Array3f& gain() const { return gain_; }
  /// How much bare cloth wavers from picture to picture, grey levels: the standard deviation of one channel.
  [[nodiscard]] double noise() const { return noise_; }
  /// Grey levels beyond which a small pixel is not cloth, plainly or faintly: those that smooth cloth and the film's
  /// own noise stay below.
  [[nodiscard]] int clearly() const;
  [[nodiscard]] int faintly() const;

  /// How far each pixel of the playing surface is from bare cloth: the largest channel difference, grey levels; 0 off
  /// the surface.
  [[nodiscard]] cv::Mat difference(const cv::Mat& small) const;
  /// Follows slow changes of light. occupied: non-zero where something lies.
  void learn(const cv::Mat& small, const cv::Mat& occupied);

  /// How much light falls there and how the picture shows it, B, G, R: 1 for the middle of what the cloth got in the
  /// first picture. Lamps hang unevenly, lenses darken the corners, and the same light falls on a ball as on the cloth
  /// beside it. small: of the small picture.
  [[nodiscard]] Eigen::Array3f lightAt(ImagePoint small) const;
  /// The cloth's colour at a place of the small picture, B, G, R, grey levels; the nearest place inside it.
  [[nodiscard]] Eigen::Vector3f colourAt(ImagePoint small) const;
  [[nodiscard]] const cv::Mat& surface() const { return surface_; }

 private:
  void takeEvenness();

  SmallScale scale_;
  cv::Mat surface_;     ///< 255 on the playing surface
  cv::Mat cloth_;       ///< 8-bit BGR
  cv::Mat clothExact_;  ///< float BGR
  cv::Mat evenness_;    ///< float: how bright the smooth cloth is, 1 in the middle of its values
  Eigen::Array3f gain_ = Eigen::Array3f::Ones();
  double noise_ = 0.0;
  double exposure_ = 1.0;  ///< ClothDistance::exposure of the first picture's cloth
  bool noiseIsKnown_ = false;
};

}  // namespace ferrule
