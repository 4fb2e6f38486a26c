// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/camera/board.h"
#include "core/camera/rig.h"

namespace ferrule {

/// A kind of lens to try: a model, and how many of its coefficients are free (in their order; the others stay zero).
struct LensShape {
  LensModel model = LensModel::Brown5;
  int coefficients = 5;
  std::string name;  ///< for reports

  bool operator==(const LensShape&) const = default;
};

/// A lens and the board's pose in every view, adjusted together.
struct LensAdjustment {
  Lens lens;
  std::vector<CameraFromTable> poses;  ///< camera from board, one per view
  /// Of (focal x, focal y, centre x, centre y, free coefficients).
  Eigen::MatrixXd covariance;
  double rms_px = 0.0;                              ///< of all residuals' lengths
  std::vector<std::vector<ImageVector>> residuals;  ///< seen - predicted, per view and corner, px
};

/// Least squares over all corners of all views (bundle adjustment with the board's shape taken as exact).
/// Nothing when no start leads to a solution: views too few or too flat for this shape.
/// Source: Zhang 2000 (start); Triggs, McLauchlan, Hartley and Fitzgibbon 2000, section 6 (reduced normal equations).
[[nodiscard]] std::optional<LensAdjustment> adjustLens(const LensShape& shape, const Board& board,
                                                       std::span<const BoardView> views,
                                                       const std::optional<Lens>& start = std::nullopt);

}  // namespace ferrule
