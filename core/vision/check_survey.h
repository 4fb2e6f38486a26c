// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/check_evidence.h"
#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/vision/tag_survey.h"

namespace ferrule {

/// Gathers what a film tells about a rig: pixels only, so that a wrong rig or table file cannot bend the evidence. The
/// rig serves to tell the table's head from its foot.
class CheckSurvey {
 public:
  /// tableName stands for the table's file in errors. Errors: FieldInvalid (unknown dictionary).
  [[nodiscard]] static Result<CheckSurvey> of(const MeasuredTable& measured, const std::string& tableName);

  /// Takes a picture of the film, 8-bit BGR, upright. A few dozen, a tenth of a second or more apart, are enough.
  void add(const cv::Mat& picture);

  /// Tags and lines; no balls. film stands for the film in errors.
  /// Errors: ImageMirrored; TagsInconsistent (detail "twice").
  [[nodiscard]] Result<CheckEvidence> result(const Rig& rig, const std::string& film) const;

  /// Balls that rest apart from others, each averaged over the pictures it is found in. near: a rig that is right to
  /// about a ball's radius, such as the likeliest explanation of the lines and tags.
  [[nodiscard]] std::vector<BallSighting> restingBalls(const Rig& near) const;

 private:
  explicit CheckSurvey(const MeasuredTable& measured) : measured_(measured) {}

  MeasuredTable measured_;
  std::optional<TagSurvey> tags_;  ///< nothing for a table without tags
  std::vector<cv::Mat> pictures_;
  int images_ = 0;
};

}  // namespace ferrule
