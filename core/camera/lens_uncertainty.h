// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/lens.h"

namespace ferrule {

/// How well a lens is known: the covariance of (focal x, focal y, centre x, centre y, the coefficients of its model in
/// their order), px and none. Empty when nothing is known.
struct LensUncertainty {
  std::vector<double> covariance;  ///< row by row

  [[nodiscard]] Eigen::Index parameters() const;
  [[nodiscard]] Eigen::MatrixXd matrix() const;
  [[nodiscard]] static LensUncertainty of(const Eigen::MatrixXd& covariance);
  bool operator==(const LensUncertainty&) const = default;
};

/// A lens with its parameters changed by so much, in the order of the covariance; further coefficients stay.
[[nodiscard]] Lens changedLens(const Lens& lens, const Eigen::VectorXd& by);

/// The uncertainty of a scaled lens (see scaledLens), or of a turned one (see turnedLens).
[[nodiscard]] LensUncertainty scaledUncertainty(const LensUncertainty& uncertainty, const Lens& lens, ImageSize size);
[[nodiscard]] LensUncertainty turnedUncertainty(const LensUncertainty& uncertainty, const Lens& lens,
                                                int clockwise_deg);

/// What a lens file's report says of its uncertainty. Files without a covariance give that of their parameters'
/// uncertainties alone, which is too large, since focal length and bending make up for each other; files without a
/// report give an empty one. Errors: those of readLensFile.
[[nodiscard]] Result<LensUncertainty> readLensUncertainty(const std::string& path);

}  // namespace ferrule
