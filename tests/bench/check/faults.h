// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <opencv2/core/mat.hpp>
#include <string>
#include <vector>

#include "core/camera/rig.h"
#include "core/camera/self_check.h"
#include "core/table/measured_table.h"

namespace ferrule::bench {

/// A clip as it came, before a fault is planted.
struct SoundClip {
  Rig rig;
  MeasuredTable measured;
  Lens otherLens;  ///< of the other camera, at this film's size
};

/// A fault as it happens to an owner: in the film's pictures, in the rig or in the table file.
struct PlantedFault {
  std::string name;
  std::vector<RigFault> expected;  ///< verdicts that name it; the first is the best one
  std::function<cv::Mat(const cv::Mat&, const SoundClip&)> picture;  ///< may be empty
  std::function<void(SoundClip&)> files;                             ///< may be empty
  /// The rig is made again from the film's tags, with the fault already in.
  bool rigMadeAfter = false;
};

[[nodiscard]] std::vector<PlantedFault> plantedFaults();

}  // namespace ferrule::bench
