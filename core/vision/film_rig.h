// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/vision/line_survey.h"

namespace ferrule {

/// What a rig is to be made of.
struct RigWanted {
  std::string lensFile;  ///< empty, with withoutTags: the lens comes from the cushions' straightness
  std::string table;     ///< the table file's name, for errors
  MeasuredTable measured;
  std::string film;                      ///< a film, or a still
  bool withoutTags = false;              ///< from the cushions alone
  PictureSide head = PictureSide::Left;  ///< where the picture has the table's head; heeded without tags
  std::string date;                      ///< ISO 8601
};

/// A rig from a film of the table: tags and noses are looked for in its first half minute.
/// Errors: those of readLensFile, FilmSource::open, TagSurvey, calibrateRig and rigFromLines; Cancelled.
[[nodiscard]] Result<Rig> rigFromFilm(const RigWanted& wanted, const JobControl& job = {});

}  // namespace ferrule
