// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <array>
#include <optional>
#include <string>

#include "core/camera/lens.h"
#include "core/geometry/frames.h"

namespace ferrule {

/// Where a projector's pixels fall on the cloth: a perspective map and what the projector's own lens bends, about the
/// middle of its picture. Pixel centres lie at whole numbers. Good for the cloth (z = 0) alone: on the rails the light
/// falls elsewhere.
struct Projector {
  ImageSize size;
  /// Straight picture coordinates, in picture widths from the middle, from table places in m.
  Eigen::Matrix3d straightFromTable = Eigen::Matrix3d::Identity();
  std::array<double, 4> bending{};  ///< k1, k2, p1, p2 (Brown 1971) on straight coordinates; 0 where nothing shows
  double rms_m = 0.0;               ///< of the fitted corners on the cloth
  double heldOutRms_m = 0.0;        ///< of corners whose tag had no part in the fit
  int tags = 0;
  std::string date;

  bool operator==(const Projector&) const = default;
};

/// The pixel that lights a place on the cloth; nothing for a place behind the projector. It may lie outside the
/// picture.
[[nodiscard]] std::optional<ImagePoint> projectorFromTable(const Projector& projector, TablePoint place);
/// Where a pixel's light falls; nothing where the bending cannot be undone.
[[nodiscard]] std::optional<TablePoint> tableFromProjector(const Projector& projector, ImagePoint pixel);

}  // namespace ferrule
