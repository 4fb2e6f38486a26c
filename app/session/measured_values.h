// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "app/film/film_pictures.h"
#include "app/review/moment.h"
#include "core/camera/rig.h"
#include "core/measure/film_referee.h"
#include "core/record/record_values.h"
#include "core/vision/picture_light.h"

/// What a session shows while it is measured.
namespace ferrule {

/// One image with the balls that were found in this very image.
struct SeenImage {
  FilmPicture picture;
  std::vector<BallNow> balls;
  std::shared_ptr<const Rig> rig;  ///< under which it was read
  LightFault light = LightFault::None;
  double exposure_s = 0.0;  ///< of the camera; 0: not known
};

/// A shot that was just measured.
struct MeasuredShot {
  ShotReading reading;
  std::optional<FilmRuling> ruling;  ///< nothing without a referee
  ShotId id;                         ///< in the record
};

}  // namespace ferrule
