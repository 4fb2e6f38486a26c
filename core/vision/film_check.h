// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/error.h"
#include "core/base/progress.h"
#include "core/camera/self_check.h"
#include "core/vision/check_survey.h"

namespace ferrule {

/// A rig checked against a film.
struct FilmCheck {
  CheckEvidence evidence;
  SelfCheck check;
  double looked_s = 0.0;  ///< how much of the film was looked at
};

/// Whether a rig and a table file belong to a film, from the film alone; the first seconds are enough.
/// tableName stands for the table's file in errors.
/// Errors: those of FilmSource::open; FieldInvalid (unknown dictionary); ImageMirrored; TagsInconsistent (detail
/// "twice"); TagsTooFew (the film shows neither tags nor cushions); Cancelled.
[[nodiscard]] Result<FilmCheck> checkFilm(const std::string& film, const Rig& rig, const MeasuredTable& measured,
                                          const std::string& tableName, const JobControl& job = {});

/// The same from pictures that were gathered before. film stands for the film in errors.
/// Errors: ImageMirrored; TagsInconsistent (detail "twice"); TagsTooFew.
[[nodiscard]] Result<FilmCheck> checkPictures(const CheckSurvey& survey, const std::string& film, const Rig& rig,
                                              const MeasuredTable& measured, const JobControl& job = {});

}  // namespace ferrule
