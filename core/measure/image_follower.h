// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>

#include "core/measure/cue_watch.h"
#include "core/measure/reading_source.h"
#include "core/vision/ball_tracker.h"
#include "core/vision/tag_watch.h"

namespace ferrule {

/// The balls of images that come one by one, from a film or a camera. A camera that moves is followed: once the tags
/// lie still again, the balls are followed anew under the new rig. The cue is looked for beside them.
class ImageFollower {
 public:
  /// kit: where the cue carries tags; nothing for a plain cue.
  ImageFollower(const Rig& rig, const MeasuredTable& measured, const std::optional<CueKit>& kit = {});

  /// picture: 8-bit BGR of the rig's size; numbers and times rise. The readings that became final with it, in order;
  /// what was seen from another place of the camera is handed on by itself.
  [[nodiscard]] std::vector<ImageReading> feed(const cv::Mat& picture, long number, double time_s);
  /// The readings that were still open at the end.
  [[nodiscard]] std::vector<ImageReading> finish();

  /// The image that was fed last with the balls as far as they are known by now (BallTracker::newest).
  [[nodiscard]] std::optional<ImageReading> newest() const { return tracker_.newest(); }
  /// picture: the one that was fed last. It is shared, not copied.
  [[nodiscard]] KeptPicture keptOf(const cv::Mat& picture) const { return {picture, rig_, tracker_.exposure_s()}; }

  /// Where the camera was when it took what was handed on last, m in the table frame.
  [[nodiscard]] TablePoint3 camera() const { return camera_; }
  /// Every move of the camera so far, in order.
  [[nodiscard]] const std::vector<CameraMove>& moves() const { return moves_; }

  /// What was seen of the cue before a shot; once a shot, in order.
  [[nodiscard]] std::optional<CueReading> cueOf(const ReadShot& shot) { return cue_.readingOf(shot); }

  /// From now on one picture of each kPictureSpacing_s is kept until its reading has been handed on.
  void keepPictures() { keepsPictures_ = true; }
  /// Of an image that was handed on last.
  [[nodiscard]] std::optional<KeptPicture> picture(long image) const;

  static constexpr double kPictureSpacing_s = 0.08;  ///< the eye sees a steady film; few pictures wait at a time

 private:
  struct Waiting {
    long number = 0;
    double time_s = 0.0;
    KeptPicture kept;
  };

  void keep(const cv::Mat& picture, long number, double time_s);
  void handedOn(const std::vector<ImageReading>& readings);

  MeasuredTable measured_;
  std::shared_ptr<const Rig> rig_;
  BallTracker tracker_;
  TablePoint3 camera_;             ///< of what was handed on last
  TablePoint3 movedTo_;            ///< of what comes next
  std::optional<TagWatch> watch_;  ///< nothing on a table without tags
  CueWatch cue_;
  std::vector<CameraMove> moves_;
  bool keepsPictures_ = false;
  long newest_ = -1;  ///< the last image that was handed on
  std::deque<Waiting> waiting_;
};

}  // namespace ferrule
