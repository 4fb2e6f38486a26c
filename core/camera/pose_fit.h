// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <span>
#include <vector>

#include "core/camera/rig.h"

namespace ferrule {

/// A point that is known on the table and seen in the picture.
struct Sighting {
  TablePoint3 point;
  ImagePoint pixel;
  double u_px = 1.0;  ///< standard uncertainty per axis: detection and measured place together
};

/// A camera's pose from sightings.
struct PoseFit {
  CameraFromTable pose;
  /// Of (rotation vector in the camera frame, translation_m); widened where the residuals exceed the stated u_px.
  Eigen::Matrix<double, 6, 6> covariance = Eigen::Matrix<double, 6, 6>::Zero();
  std::vector<ImageVector> residuals;  ///< seen - predicted, px, in the order of the sightings
  double rms_px = 0.0;                 ///< of the residuals' lengths
};

/// A pose turned and shifted a little: step is (rotation vector in the camera frame, shift_m).
[[nodiscard]] CameraFromTable movedPose(const CameraFromTable& pose, const Eigen::Matrix<double, 6, 1>& step);

/// Least squares over all sightings through the full lens model; the start is a globally optimal PnP.
/// Nothing for fewer than four sightings, sightings on one line, or a lens that cannot reach them.
/// Source: Terzakis and Lourakis 2020 (start); Levenberg 1944, Marquardt 1963 (refinement).
[[nodiscard]] std::optional<PoseFit> fitPose(const Lens& lens, std::span<const Sighting> sightings);

}  // namespace ferrule
