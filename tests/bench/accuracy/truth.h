// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/rig.h"
#include "core/table/ball.h"
#include "core/table/pocket.h"
#include "core/table/shot.h"

namespace ferrule::bench {

/// Where a ball really was at the middle of one image's exposure.
struct TrueBall {
  BallName ball;
  TablePoint3 position;  ///< m, of its centre
  TablePoint apparent;   ///< m, where the camera's ray through the centre meets the plane of resting balls' centres
  double visible = 0.0;  ///< share of its disc that the camera can see
  bool inPlay = false;
  bool inHand = false;
  bool onCloth = false;  ///< its centre is a radius above the cloth, within half a millimetre
  double speed_mps = 0.0;
};

/// One image of a film.
struct TrueImage {
  double time_s = 0.0;
  std::vector<TrueBall> balls;
};

/// One shot of a film.
struct TrueShot {
  double strike_s = 0.0;
  double rest_s = 0.0;
  double aim_rad = 0.0;    ///< the way the cue ball really leaves
  double speed_mps = 0.0;  ///< just after the strike
  double side = 0.0;       ///< tip point, in ball radii
  double height = 0.0;     ///< tip point, in ball radii
  double elevation_rad = 0.0;
  std::vector<ShotEvent> events;  ///< in time order
  std::optional<BallName> firstContact;
  std::vector<PocketedBall> pocketed;
  Outcome outcome = Outcome::Miss;
};

/// The answers to one film, or to one simulated shot.
struct Truth {
  double radius_m = 0.0;
  double rate_hz = 0.0;
  std::string camera;  ///< its folder's name under calibration/
  Rig rig;             ///< the true lens and pose
  std::vector<TrueImage> images;
  std::vector<TrueShot> shots;
};

/// Reads truth.json of a film folder. Errors: FileMissing, FileEmpty, FileMalformed.
[[nodiscard]] Result<Truth> readTruth(const std::string& path);

}  // namespace ferrule::bench
