// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <Eigen/Core>

#include "core/camera/check_evidence.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"

namespace ferrule {

/// Which pose a rig would have been given with another lens, or over another table, from the same pictures: of the tags
/// where it was made of tags, else of the noses, and of the sights where they had a part in it.
class FollowingPose {
 public:
  FollowingPose(const Rig& rig, const MeasuredTable& measured);

  /// What must be done to the rig's pose (see movedPose).
  [[nodiscard]] Eigen::Matrix<double, 6, 1> step(const Lens& lens, const MeasuredTable& measured) const;

 private:
  CameraFromTable pose_;
  CheckEvidence seen_;
};

}  // namespace ferrule
