// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <opencv2/core/mat.hpp>
#include <span>

#include "core/camera/silhouette.h"
#include "core/table/ball_set.h"

namespace ferrule {

/// What the lamps and the camera make of white, per channel (B, G, R), grey levels, in the light that the cloth model
/// calls 1 (ClothModel::lightAt).
struct WhiteReference {
  Eigen::Array3f level{230.0F, 230.0F, 230.0F};
  bool seen = false;  ///< level comes from a ball, not from the default or a guess

  /// Before the first white ball is known, a dark room or a warm lamp would make it look coloured: white is what is
  /// brightest in every channel at once, as no paint is. Nothing changes where no ball of those seen is. looks: what
  /// several balls show, in this light.
  void guess(std::span<const struct BallColours> looks);
  /// The whitest large white part seen so far is the reference; it follows slow changes of light. support: of the fit.
  void learn(const struct BallColours& colours, double support);

  bool operator==(const WhiteReference& other) const { return (level == other.level).all(); }
};

/// The colours on a ball's disc, shadow and highlight taken out as far as one picture allows.
struct BallColours {
  double white = 0.0;     ///< share of the disc
  double dark = 0.0;      ///< share of the disc
  double coloured = 0.0;  ///< share of the disc
  double hue_deg = 0.0;   ///< of the coloured part, circular mean
  double saturation = 0.0;
  double value = 0.0;                            ///< of the coloured part against white, 0 to 1
  Eigen::Array3f brightWhite{0.0F, 0.0F, 0.0F};  ///< mean of the white part, B, G, R
  Eigen::Array3f brightest{0.0F, 0.0F, 0.0F};    ///< mean of its brightest part without highlights, B, G, R
};

/// Looks at the pixels within the outline. picture: 8-bit BGR.
[[nodiscard]] BallColours coloursOf(const cv::Mat& picture, const Silhouette& outline, const WhiteReference& white);

/// Log-likelihood of each name given what one picture shows, up to a common constant; each at least kLeastLikelihood.
using NameLikelihood = std::array<double, BallName::kCount>;
inline constexpr double kLeastLikelihood = -25.0;
[[nodiscard]] NameLikelihood likelihoodOfNames(const BallColours& colours, const BallSet& set);

}  // namespace ferrule
