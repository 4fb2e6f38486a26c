// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <string>
#include <vector>

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
  /// Lines that a person placed in the film's picture; each stands in for all that is found of its cushion.
  std::vector<LineTrace> handLines;
  std::string date;  ///< ISO 8601
};

/// A film's lines with the picture that they were found in: a median over its images, so that what moves is gone.
struct SeenLines {
  cv::Mat picture;  ///< 8-bit BGR
  std::vector<LineTrace> lines;
};

/// The lines that a rig without tags would be made from. None where no cloth is found: then a person places them all.
/// Errors: those of FilmSource::open; FilmTruncated for a film without images; Cancelled.
[[nodiscard]] Result<SeenLines> linesOfFilm(const RigWanted& wanted, const JobControl& job = {});

/// A rig from a film of the table: tags and noses are looked for in its first half minute.
/// Errors: those of readLensFile, FilmSource::open, TagSurvey, calibrateRig and rigFromLines; Cancelled.
[[nodiscard]] Result<Rig> rigFromFilm(const RigWanted& wanted, const JobControl& job = {});

}  // namespace ferrule
