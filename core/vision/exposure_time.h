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

 private:
  double exposure_s_ = 0.0;
};

}  // namespace ferrule
