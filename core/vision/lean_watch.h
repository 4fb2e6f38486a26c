// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <opencv2/core/mat.hpp>
#include <optional>

#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/vision/cloth_model.h"

namespace ferrule {

/// Tells from the pictures of a camera over the table whether somebody leans over it, so that a projector can go black
/// before eyes come into its beam.
///
/// What hides the cloth, reaches in over a cushion and is wider than a cue is somebody: an arm is enough. Balls lie
/// inside, a cue is thin, and so are lines of light on the cloth.
class LeanWatch {
 public:
  LeanWatch(std::shared_ptr<const Rig> rig, const MeasuredTable& measured);

  /// picture: 8-bit BGR of the rig's size. Whether somebody leans over the table; nothing while that is as it was.
  [[nodiscard]] std::optional<bool> look(const cv::Mat& picture);

  [[nodiscard]] const std::shared_ptr<const Rig>& rig() const { return rig_; }

  /// Of the cloth that must be hidden, m^2: half a forearm.
  static constexpr double kLeastHidden_m2 = 0.02;

 private:
  [[nodiscard]] bool leans(const cv::Mat& picture);

  std::shared_ptr<const Rig> rig_;
  double radius_m_;
  SmallScale scale_;
  ClothModel cloth_;
  double metresPerPixel_ = 0.0;  ///< of the small picture, in the middle of the table
  bool started_ = false;
  std::optional<bool> last_;
};

}  // namespace ferrule
