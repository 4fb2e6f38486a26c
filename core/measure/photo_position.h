// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"

namespace ferrule {

/// A picture of a table and what is known of the camera that took it; paths.
struct PhotoFiles {
  std::string photo;  ///< of the rig's image size, turned as its camera is; of a film the first image counts
  std::string rig;
  std::string table;  ///< or a preset's name

  bool operator==(const PhotoFiles&) const = default;
};

/// Where the balls lie in a photo, in m on the table and in the order of their names, and the table itself. Names come
/// from one look alone, so they are less sure than those of a film; each stands once.
struct PhotoPosition {
  Position balls;
  MeasuredTable table;

  bool operator==(const PhotoPosition&) const = default;
};

/// Errors: those of the rig and table file and of FilmSource::open; ImageSizeMismatch (subject: the photo; detail: the
/// rig file; numbers: photo w, h, rig w, h); BallsNotFound (subject: the photo); Cancelled.
[[nodiscard]] Result<PhotoPosition> positionInPhoto(const PhotoFiles& files, const JobControl& job = {});

}  // namespace ferrule
