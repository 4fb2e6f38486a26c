// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/error.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "tests/bench/accuracy/truth.h"
#include "tests/bench/accuracy/worse_film.h"

namespace ferrule::bench {

/// How far two rigs put the same picture points apart on the plane of the balls' centres, over the whole table.
struct RigDifference {
  double rms_m = 0.0;
  double max_m = 0.0;
  int points = 0;
  std::vector<std::pair<TablePoint, TablePoint>> places;  ///< by the truth, by the rig
};
[[nodiscard]] RigDifference differenceOf(const Rig& rig, const Rig& truth, const MeasuredTable& measured);

/// Makes the rigs of the films as an owner would: a lens from the stills in calibration/CAMERA, once for every camera,
/// and a pose from the film's own tags.
class RigMaker {
 public:
  /// folder: holds calibration/. trueRig: take lens and pose from the truth instead.
  RigMaker(std::string folder, bool trueRig) : folder_(std::move(folder)), trueRig_(trueRig) {}

  /// Of truth only the camera's name is used, unless trueRig. Errors: those of calibrateLens, TagSurvey, calibrateRig.
  /// worse: the film was made worse so.
  [[nodiscard]] Result<Rig> make(const std::string& film, const Truth& truth, const MeasuredTable& measured,
                                 std::optional<Worsening> worse = std::nullopt);
  /// The lens of one camera from its stills. Errors: those of viewsOfBoard and calibrateLens.
  [[nodiscard]] Result<Lens> lensOf(const std::string& camera);

 private:
  std::string folder_;
  bool trueRig_;
  std::map<std::string, Lens> lenses_;  ///< by camera
  std::map<std::string, LensUncertainty> uncertainties_;
};

}  // namespace ferrule::bench
