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
#include "core/vision/mark_survey.h"

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
  /// What a person said of sights and pockets there.
  std::vector<HandMark> handMarks;
  std::string date;  ///< ISO 8601
};

/// A film's lines and marks with the picture that they were found in: a median over its images, so that what moves is
/// gone.
struct SeenLines {
  cv::Mat picture;  ///< 8-bit BGR
  std::vector<LineTrace> lines;
  std::vector<MarkSighting> marks;
};

/// The lines and marks that the film shows, before a person's word on any; hand lines only help to find marks. None
/// where no cloth is found: then a person places them all.
/// Errors: those of readLensFile and FilmSource::open; FilmTruncated for a film without images; Cancelled.
[[nodiscard]] Result<SeenLines> linesOfFilm(const RigWanted& wanted, const JobControl& job = {});

/// The rig of lines and marks that are known already, by the same lens; film: its size and turn. Quick.
/// Errors: those of readLensFile, FilmSource::open and fitRigFromLines.
[[nodiscard]] Result<LinesFit> fitOfLines(const RigWanted& wanted, const std::vector<LineTrace>& lines,
                                          const std::vector<MarkSighting>& marks);

/// A rig from a film of the table: tags and noses are looked for in its first half minute.
/// Errors: those of readLensFile, FilmSource::open, TagSurvey, calibrateRig and rigFromLines; Cancelled.
[[nodiscard]] Result<Rig> rigFromFilm(const RigWanted& wanted, const JobControl& job = {});

}  // namespace ferrule
