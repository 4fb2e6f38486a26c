// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>
#include <optional>
#include <string>
#include <vector>

#include "core/camera/correction_chain.h"
#include "core/camera/lens.h"
#include "core/camera/lens_uncertainty.h"
#include "core/geometry/frames.h"
#include "core/table/cushion.h"

namespace ferrule {

/// point in camera = rotation * point on table + translation_m.
struct CameraFromTable {
  Eigen::Matrix3d rotation = Eigen::Matrix3d::Identity();
  Eigen::Vector3d translation_m = Eigen::Vector3d::Zero();

  bool operator==(const CameraFromTable& other) const {
    return rotation == other.rotation && translation_m == other.translation_m;
  }
};

/// How well one tag agrees with the rig.
struct TagResidual {
  int id = 0;
  double rms_px = 0.0;
  double rms_m = 0.0;          ///< on the tag's own plane
  double leaveOneOut_m = 0.0;  ///< this tag's distance when the pose comes from the others

  bool operator==(const TagResidual&) const = default;
};

/// How straight the nose of one cushion comes out after every correction, on the plane of its height.
struct NoseStraightness {
  CushionName cushion = CushionName::Head;
  double rms_m = 0.0;  ///< of its edge from the best straight line
  double max_m = 0.0;
  int places = 0;  ///< where its edge was seen

  bool operator==(const NoseStraightness&) const = default;
};

/// A lens and where the camera sits over one table.
struct Rig {
  Lens lens;  ///< at the film's own image size (already scaled where the chain says so)
  CameraFromTable pose;
  CorrectionChain chain;
  /// Covariance of (rotation vector in the camera frame, translation_m).
  Eigen::Matrix<double, 6, 6> poseCovariance = Eigen::Matrix<double, 6, 6>::Zero();
  LensUncertainty lensUncertainty;  ///< of lens; empty in rigs made before it was kept
  double poseRms_px = 0.0;
  double tagRms_m = 0.0;
  std::vector<TagResidual> tags;
  std::vector<NoseStraightness> noses;  ///< those that the film showed
  std::string verdict;                  ///< of the check that made it: "fits" or what is wrong

  bool operator==(const Rig&) const = default;
};

/// Where a point of the table frame is seen; nothing behind the camera or beyond the lens model.
[[nodiscard]] std::optional<ImagePoint> imageFromTable(const Rig& rig, TablePoint3 point);
/// The point at a height above the cloth that is seen there; height R for the centre of a resting ball.
[[nodiscard]] std::optional<TablePoint> tableFromImage(const Rig& rig, ImagePoint point, double height_m);
/// The camera's own place in the table frame, m.
[[nodiscard]] TablePoint3 cameraPosition(const Rig& rig);

}  // namespace ferrule
