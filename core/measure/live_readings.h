// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/image_follower.h"
#include "core/measure/image_queue.h"

namespace ferrule {

/// What is known of an image at once, some tenths of a second before its reading is final.
struct Glimpse {
  ImageReading reading;
  KeptPicture kept;
};

/// The balls of images that somebody else puts into a queue, as FilmReadings has them of a film: the same images give
/// the same readings.
class LiveReadings : public ReadingSource {
 public:
  /// images must outlive this. stop: no further image is waited for.
  LiveReadings(ImageQueue& images, const Rig& rig, const MeasuredTable& measured, std::stop_token stop);

  /// Waits for the next image.
  [[nodiscard]] std::optional<std::vector<ImageReading>> next() override;
  [[nodiscard]] SourceProgress progress() const override { return progress_; }
  [[nodiscard]] std::optional<TablePoint3> camera() const override { return follower_.camera(); }
  void keepPictures() override { follower_.keepPictures(); }
  [[nodiscard]] std::optional<KeptPicture> picture(long image) const override { return follower_.picture(image); }
  /// The newest image with the balls as far as they are known by now; nothing while later ones wait to be measured and
  /// one was seen less than kSeldom_s before, so that a picture never makes the measuring fall further behind.
  [[nodiscard]] std::optional<Glimpse> glimpse();
  [[nodiscard]] const std::vector<CameraMove>& moves() const { return follower_.moves(); }
  /// The size of the image that ended it, because the rig is of another; nothing while all fit.
  [[nodiscard]] const std::optional<ImageSize>& misfit() const { return misfit_; }

  static constexpr double kSeldom_s = 0.25;

 private:
  ImageQueue& images_;
  ImageSize size_;
  std::stop_token stop_;
  ImageFollower follower_;
  cv::Mat newest_;
  double glimpsed_s_ = -kSeldom_s;
  SourceProgress progress_;
  std::optional<ImageSize> misfit_;
  bool finished_ = false;
};

}  // namespace ferrule
