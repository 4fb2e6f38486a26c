// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/time_axis.h"

#include <algorithm>

namespace ferrule {

namespace {

/// Between two films whose clock times are unknown.
constexpr double kGap_s = 10.0;

double lastTime_s(const FrameContent& frame) {
  double last_s = 0.0;
  for (const ShotSummary& shot : frame.shots)
    last_s = std::max(last_s, shot.rest_s);
  for (const Placement& placement : frame.placements)
    last_s = std::max(last_s, placement.time_s);
  if (frame.frame.film) last_s = std::max(last_s, frame.frame.film->duration_s);
  return last_s;
}

bool sameFilm(const FrameContent& a, const FrameContent& b) {
  return a.frame.film && b.frame.film && a.frame.film->id == b.frame.film->id;
}

}  // namespace

TimeAxis::TimeAxis(const SessionContent& content) {
  const auto& frames = content.frames;
  isClockTime_ = !frames.empty() && std::ranges::all_of(frames, [](const FrameContent& frame) {
    return frame.frame.film && frame.frame.film->firstImage;
  });
  double end_s = 0.0;
  for (std::size_t i = 0; i < frames.size(); ++i) {
    double offset_s = 0.0;
    if (isClockTime_) {
      offset_s = static_cast<double>(*frames[i].frame.film->firstImage - content.session.started) / 1000.0;
    } else if (i > 0) {
      offset_s = sameFilm(frames[i - 1], frames[i]) ? offsets_s_.back() : end_s + kGap_s;
    }
    offsets_s_.push_back(offset_s);
    end_s = std::max(end_s, offset_s + lastTime_s(frames[i]));
  }
  if (!offsets_s_.empty()) begin_s_ = std::ranges::min(offsets_s_);
  end_s_ = end_s;
}

double TimeAxis::offset_s(std::size_t frame) const {
  return frame < offsets_s_.size() ? offsets_s_[frame] : 0.0;
}

}  // namespace ferrule
