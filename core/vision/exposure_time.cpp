// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/exposure_time.h"

#include <algorithm>

namespace ferrule {

void ExposureTime::learn(const BallTrack& track, const BallCandidate& candidate, double time_s, double interval_s) {
  const double streak_px = length(candidate.blur);
  if (streak_px == 0.0 || !candidate.alone || track.fixes.size() < 3 || interval_s <= 0.0) return;
  const double way_px = length(candidate.outline.centre - track.outline.centre);
  const double dt = time_s - track.lastSeen_s;
  if (way_px < streak_px || dt <= 0.0) return;
  const double exposure_s = std::min(streak_px / way_px * dt, interval_s);
  ++streaks_;
  exposure_s_ += (exposure_s_ == 0.0 ? 1.0 : 0.1) * (exposure_s - exposure_s_);
}

}  // namespace ferrule
