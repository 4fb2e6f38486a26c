// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

#include "core/camera/rig.h"
#include "core/cue/cue_model.h"
#include "core/cue/cue_sighting.h"
#include "core/cue/pitch_log.h"

namespace ferrule::testing {

/// A plain camera two metres over the table's middle, its picture's x along the table.
[[nodiscard]] Rig cameraAbove();

/// Two tags of 40 mm on an invented cue, with a bridge of known height.
[[nodiscard]] MeasuredCue taggedCue();

/// How an invented player addresses the ball and strikes it.
struct InventedStroke {
  TablePoint ball{0.7, 0.05};
  double radius_m = 0.028575;
  double aim_rad = 2.9;
  double elevation_rad = 0.09;
  double side_m = -0.003;     ///< of the axis past the ball's centre
  double tipSpeed_mps = 1.2;  ///< when it reaches the ball
  double sway_rad = 0.0;      ///< standard deviation of the aim from image to image
  double strike_s = 5.0;
  double first_s = 1.2;  ///< the tags come into sight, the butt still high
  double rate_hz = 30.0;
  double corner_px = 0.05;  ///< noise of the corners
  double bridge_m = 0.21;   ///< from the ball
  double bridgeHeight_m = 0.047;
  double sensorBias_rad = 0.02;
  double sensorNoise_rad = 0.0025;
  double logMinusFilm_s = 0.0;
  double logFrom_s = 0.0;  ///< by the film's clock
  double logUntil_s = 7.0;
};

/// What a film of it shows, and what was planted.
struct AddressFilm {
  std::vector<CueSighting> sightings;
  PitchLog log;
  double tipHeight_m = 0.0;  ///< of the axis past the ball's centre
};
[[nodiscard]] AddressFilm filmOf(const InventedStroke& stroke, const Rig& rig, const MeasuredCue& cue,
                                 std::uint64_t seed);

/// Where the cue is at a time.
[[nodiscard]] CuePose poseAt(const InventedStroke& stroke, const CueModel& model, double time_s, double sway_rad);

}  // namespace ferrule::testing
