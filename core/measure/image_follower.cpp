// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/image_follower.h"

#include <algorithm>
#include <utility>

namespace ferrule {

ImageFollower::ImageFollower(const Rig& rig, const MeasuredTable& measured, const std::optional<CueKit>& kit)
    : measured_(measured),
      rig_(std::make_shared<const Rig>(rig)),
      tracker_(rig, measured),
      camera_(cameraPosition(rig)),
      movedTo_(camera_),
      watch_(TagWatch::of(rig, measured)),
      cue_(rig, measured, kit) {}

std::vector<ImageReading> ImageFollower::feed(const cv::Mat& picture, long number, double time_s) {
  camera_ = movedTo_;
  std::vector<ImageReading> final;
  bool moved = false;
  if (auto move = watch_ ? watch_->look(picture, number, time_s) : std::nullopt) {
    tracker_.finish();
    final = tracker_.take();
    moved = true;
    rig_ = std::make_shared<const Rig>(move->rig);
    tracker_ = BallTracker(*rig_, measured_);
    movedTo_ = cameraPosition(*rig_);
    cue_.setRig(*rig_, move->time_s);
    moves_.push_back(std::move(*move));
  }
  keep(picture, number, time_s);
  tracker_.feed(picture, number, time_s);
  cue_.look(picture, number, time_s);
  if (!moved) final = tracker_.take();
  handedOn(final);
  return final;
}

std::vector<ImageReading> ImageFollower::finish() {
  camera_ = movedTo_;
  tracker_.finish();
  std::vector<ImageReading> final = tracker_.take();
  handedOn(final);
  return final;
}

void ImageFollower::keep(const cv::Mat& picture, long number, double time_s) {
  if (!keepsPictures_) return;
  if (!waiting_.empty() && time_s < waiting_.back().time_s + kPictureSpacing_s) return;
  waiting_.push_back({number, time_s, {picture, rig_}});
}

void ImageFollower::handedOn(const std::vector<ImageReading>& readings) {
  // The last picture stays, whether it was handed on or not: the spacing is counted from it.
  while (waiting_.size() > 1 && waiting_.front().number <= newest_)
    waiting_.pop_front();
  if (readings.empty()) return;
  newest_ = readings.back().image;
  cue_.note(readings.back());
}

std::optional<KeptPicture> ImageFollower::picture(long image) const {
  const auto found = std::ranges::find(waiting_, image, &Waiting::number);
  if (found == waiting_.end()) return std::nullopt;
  KeptPicture kept = found->kept;
  kept.exposure_s = tracker_.exposure_s();
  return kept;
}

}  // namespace ferrule
