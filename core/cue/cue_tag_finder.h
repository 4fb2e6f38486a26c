// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/cue/cue_sighting.h"
#include "core/table/measured_cue.h"
#include "core/vision/tag_finder.h"

namespace ferrule {

/// Looks for the cue's tags, image after image: near where they were seen last, or around the cue ball a few times a
/// second while they are out of sight. Small tags are read from an enlarged picture.
class CueTagFinder {
 public:
  /// Nothing for an unknown dictionary.
  [[nodiscard]] static std::optional<CueTagFinder> of(const Rig& rig, const MeasuredCue& cue);

  /// The camera was moved.
  void setRig(const Rig& rig) { rig_ = rig; }
  /// picture: 8-bit BGR or grey, of the rig's size; images in order. cueBall: where it lies, nothing where nobody
  /// knows: then the whole picture is looked at. Nothing where no tag was read.
  [[nodiscard]] std::optional<CueSighting> look(const cv::Mat& picture, long image, double time_s,
                                                const std::optional<TablePoint>& cueBall);

 private:
  CueTagFinder(const Rig& rig, const MeasuredCue& cue, TagFinder finder)
      : rig_(rig), cue_(cue), finder_(std::move(finder)) {}
  [[nodiscard]] cv::Rect areaToSearch(cv::Size size, double time_s, const std::optional<TablePoint>& cueBall);
  [[nodiscard]] std::vector<TagObservation> tagsIn(const cv::Mat& picture, cv::Rect area, double side_px) const;

  Rig rig_;
  MeasuredCue cue_;
  TagFinder finder_;
  std::optional<CueSighting> last_;
  double next_s_ = 0.0;
};

}  // namespace ferrule
