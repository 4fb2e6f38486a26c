// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <opencv2/core/mat.hpp>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/rig_calibration.h"
#include "core/table/measured_table.h"
#include "core/vision/tag_finder.h"

namespace ferrule {

/// Gathers the table's tags over several images of a camera that stands still.
class TagSurvey {
 public:
  /// tableName stands for the table's file in errors. Errors: TagsTooFew (the table has no tags, detail "table"),
  /// FieldInvalid (unknown dictionary).
  [[nodiscard]] static Result<TagSurvey> of(const MeasuredTable& measured, const std::string& tableName);

  /// The same for a table of any number of tags. Errors: FieldInvalid.
  [[nodiscard]] static Result<TagSurvey> ofAny(const MeasuredTable& measured, const std::string& tableName);

  void add(const cv::Mat& picture);
  /// Whether every tag of the table has been seen often enough.
  [[nodiscard]] bool enough() const;
  /// The tags' corners, each the median over its images. film stands for the film in errors.
  /// Errors: TagsTooFew, ImageMirrored, TagsInconsistent (detail "twice", numbers {id}).
  [[nodiscard]] Result<std::vector<AveragedTag>> result(const std::string& film) const;
  /// The same, however few there are. Errors: ImageMirrored, TagsInconsistent.
  [[nodiscard]] Result<std::vector<AveragedTag>> seen(const std::string& film) const;

 private:
  explicit TagSurvey(TagFinder finder) : finder_(std::move(finder)) {}

  TagFinder finder_;
  std::map<int, std::vector<TagObservation>> seen_;  ///< by id; every tag of the table has an entry
  std::map<int, int> twice_;                         ///< images that showed an id more than once
  int images_ = 0;
  int mirroredImages_ = 0;
};

}  // namespace ferrule
