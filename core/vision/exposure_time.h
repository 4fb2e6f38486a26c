// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vision/ball_track.h"

namespace ferrule {

/// How long the camera exposes, learnt from the streaks that lone balls of known speed leave.
class ExposureTime {
 public:
  /// interval_s: between this image and the one before. Call it before the track takes the sight.
  void learn(const BallTrack& track, const BallCandidate& candidate, double time_s, double interval_s);
  /// 0 until a streak was seen.
  [[nodiscard]] double time_s() const { return exposure_s_; }
  /// The same, 0 until so many streaks were seen that it can be told to people.
  [[nodiscard]] double settled_s() const { return streaks_ < kEnough ? 0.0 : exposure_s_; }

 private:
  /// Then the first streak, which may be far off, counts for less than 2 %.
  static constexpr int kEnough = 40;

  double exposure_s_ = 0.0;
  int streaks_ = 0;
};

}  // namespace ferrule
