// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <memory>
#include <optional>

#include "app/setup/setup_state.h"
#include "core/camera/check_file.h"
#include "core/camera/error_map.h"
#include "core/camera/lens_calibration.h"
#include "core/camera/projector_file.h"
#include "core/vision/board_stills.h"
#include "core/vision/film_check.h"

namespace ferrule {

/// What a film or still says of itself, with its first picture.
struct FilmLook {
  QString path;
  ImageSize size;
  int rotation_deg = 0;
  double rate_hz = 0.0;
  QImage picture;
};

/// A set-up as it stands: what a person put in, and all that came out of it so far. A step of undo is one of these.
struct SetupContents {
  SetupState state;
  std::optional<FilmLook> look;
  std::vector<BoardStill> stills;
  std::optional<LensCalibration> calibration;
  std::optional<Lens> lens;  ///< of the chosen lens file, made here or brought along
  std::string madeLens;      ///< that file's text where it was made here
  std::optional<Rig> rig;
  MeasuredTable rigTable;  ///< that the rig was made over
  std::optional<FilmCheck> check;
  CheckNames checkNames;
  std::shared_ptr<const ErrorMap> map;
  std::optional<Projector> projector;

  /// What rests on the rig is void with it, and so on down.
  void forgetRig() {
    rig.reset();
    check.reset();
    map.reset();
    state.rig.clear();
    state.folder.clear();
  }
  void forgetLens() {
    lens.reset();
    calibration.reset();
    madeLens.clear();
    state.lens.clear();
    forgetRig();
  }
};

}  // namespace ferrule
