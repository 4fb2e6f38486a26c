// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/camera_move.h"
#include "core/table/measured_table.h"
#include "core/vision/tag_finder.h"

namespace ferrule {

/// Watches the table's tags through a film for a camera (or a table) that moves.
///
/// Looks once a second, near the tags only, and oftener while it makes sure: a person's arm, one tag that is pushed and
/// a camera that swings and comes back are no moves. What moved is said once it has come to rest.
class TagWatch {
 public:
  /// Nothing for a table with fewer than three tags, or an unknown dictionary.
  [[nodiscard]] static std::optional<TagWatch> of(const Rig& rig, const MeasuredTable& measured);

  /// picture: 8-bit BGR or grey, of the rig's size. Images in order. Most calls return at once.
  [[nodiscard]] std::optional<CameraMove> look(const cv::Mat& picture, long image, double time_s);

  /// The rig that holds now: the first one, or that of the last move.
  [[nodiscard]] const Rig& rig() const { return rig_; }

  /// On the table; smaller ones are the noise of the film.
  static constexpr double kLeastMove_m = 0.001;

 private:
  using Tags = std::map<int, TagObservation>;

  TagWatch(const Rig& rig, const MeasuredTable& measured, TagFinder finder)
      : rig_(rig), measured_(measured), finder_(std::move(finder)) {}
  [[nodiscard]] Tags tagsNear(const cv::Mat& picture) const;
  /// Middle of the tags' shifts; nothing with too few tags in both.
  [[nodiscard]] std::optional<double> shift_m(const Tags& from, const Tags& to) const;
  [[nodiscard]] std::optional<Rig> solved(const std::vector<Tags>& looks, long image) const;

  Rig rig_;
  MeasuredTable measured_;
  TagFinder finder_;
  std::vector<Tags> first_;  ///< looks that become the reference
  Tags reference_;
  double next_s_ = 0.0;
  double still_s_ = 0.0;  ///< the last look without a move
  bool moving_ = false;   ///< something moved and is not yet told
  std::vector<Tags> moved_;
  long movedImage_ = 0;
  double moved_s_ = 0.0;
};

}  // namespace ferrule
