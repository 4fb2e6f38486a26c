// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/silhouette.h"
#include "core/vision/not_cloth.h"

namespace ferrule {

/// One edge that a ray met; a ray may meet several.
struct Edge {
  int ray = 0;
  Eigen::Vector2d direction;  ///< unit, outward, px
  double offset_px = 0.0;     ///< edge minus outline along the ray
  double weight = 0.0;        ///< from the contrast
};

/// Colours along one ray across a ball's outline, from half_px inside to half_px outside of it, and the edges there.
class EdgeRay {
 public:
  using Colour = Eigen::Vector3f;  ///< B, G, R, grey levels

  /// ray: its number, which its edges carry. cosine, sine: its direction, as for Silhouette::at. picture: 8-bit BGR.
  /// exposure: ClothDistance::exposure of the cloth there; contrasts are judged by it.
  EdgeRay(const cv::Mat& picture, const Silhouette& outline, int ray, double cosine, double sine, double half_px,
          float exposure = 1.0F);

  /// Whether all of it lies in the picture and it begins on the outline's own side of the centre.
  [[nodiscard]] bool valid() const { return valid_; }

  /// Whether both ends have the cloth's colour, the one being ball: then no edge shows, only the dark rim.
  [[nodiscard]] bool ballLooksLikeCloth(const Colour& cloth) const;

  /// Adds every darkest place along the ray, outermost first: a ball's limb darkens toward its outline, and its shadow
  /// on the cloth lightens away from it, so a ball of the cloth's colour is darkest on its outline. Where one side is
  /// much steeper than the other, the picture's blur moves the darkest place toward the other by up to half a pixel.
  void addValleys(const Colour& cloth, std::vector<Edge>& edges) const;

  /// Adds every place where the colour changes fast, outermost first. One of them is the ball's edge; the others are
  /// its number, its stripe, a highlight or a shadow's border, and only the outline as a whole tells which.
  /// ramp_px: half the way over which a streak blurs the edge here; changes are looked for over as much, so that the
  /// ramp's middle is found and not where it sets in.
  void addChanges(double ramp_px, std::vector<Edge>& edges) const;

  /// Weighs this ray's edges, those of edges from first on, by where cloth, lit or in shadow, ends: those near that
  /// place tell it sharply and keep their weight, others lose most of it. Without one near it, the place itself is
  /// added: half way between the distance from the cloth's colour outside and that just inside, however soft a film's
  /// coarse colours make it.
  void weighByCloth(double ramp_px, const ClothDistance& distance, std::vector<Edge>& edges, std::size_t first) const;

 private:
  [[nodiscard]] std::optional<Edge> endOfCloth(double ramp_px, const ClothDistance& distance) const;
  /// Below 1 where the inner side is only a darker shade of the outer one: a shadow rather than a ball.
  [[nodiscard]] double shadowFactor(int i) const;
  [[nodiscard]] const Colour& colour(int i) const { return colours_[static_cast<std::size_t>(i)]; }
  [[nodiscard]] Edge edgeAt(double sample, double weight) const;

  static constexpr int kMost = 129;

  std::array<Colour, kMost> colours_;
  int ray_ = 0;
  float exposure_ = 1.0F;
  Eigen::Vector2d outward_ = Eigen::Vector2d::Zero();
  double half_px_ = 0.0;
  int count_ = 0;
  bool valid_ = false;
};

}  // namespace ferrule
