// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/measured_table.h"
#include "core/table/track.h"

namespace ferrule {

/// Follows every ball through a film, image by image.
///
/// Names are settled over many images, so readings come out some images late: feed() an image, then take() what has
/// become final; finish() at the film's end settles the rest. Memory does not grow with the film.
class BallTracker {
 public:
  BallTracker(const Rig& rig, const MeasuredTable& measured);
  ~BallTracker();
  BallTracker(BallTracker&&) noexcept;
  BallTracker& operator=(BallTracker&&) noexcept;

  /// image: 8-bit BGR of the rig's size. image numbers and times rise.
  void feed(const cv::Mat& image, long number, double time_s);
  void finish();
  /// The readings that have become final since the last call, in order.
  [[nodiscard]] std::vector<ImageReading> take();
  /// The image that was fed last, as far as it is known by now: names may yet change, and a ball that was only just
  /// seen is left out. Nothing before the first image and after finish().
  [[nodiscard]] std::optional<ImageReading> newest() const;
  /// How long the camera exposes, learnt from streaks of lone balls; 0 until enough were seen.
  [[nodiscard]] double exposure_s() const;

 private:
  class Impl;
  std::unique_ptr<Impl> impl_;
};

}  // namespace ferrule
