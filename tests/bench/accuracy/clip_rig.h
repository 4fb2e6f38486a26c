// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>

#include "core/base/error.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "tests/bench/accuracy/truth.h"

namespace ferrule::bench {

/// Makes the rigs of the films as an owner would: a lens from the stills in calibration/CAMERA, once for every camera,
/// and a pose from the film's own tags.
class RigMaker {
 public:
  /// folder: holds calibration/. trueRig: take lens and pose from the truth instead.
  RigMaker(std::string folder, bool trueRig) : folder_(std::move(folder)), trueRig_(trueRig) {}

  /// Of truth only the camera's name is used, unless trueRig. Errors: those of calibrateLens, TagSurvey, calibrateRig.
  [[nodiscard]] Result<Rig> make(const std::string& film, const Truth& truth, const MeasuredTable& measured);

 private:
  [[nodiscard]] Result<Lens> lensOf(const std::string& camera);

  std::string folder_;
  bool trueRig_;
  std::map<std::string, Lens> lenses_;  ///< by camera
};

}  // namespace ferrule::bench
