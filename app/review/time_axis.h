// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "app/review/review_source.h"

namespace ferrule {

/// Puts the films of a session one after the other, so that a session has one time.
///
/// Where every film knows when its first image was taken, session time counts from the session's start and pauses are
/// to scale; otherwise the films follow each other with a short gap.
class TimeAxis {
 public:
  TimeAxis() = default;
  explicit TimeAxis(const SessionContent& content);

  /// Session time less film time for the frame at an index of SessionContent::frames.
  [[nodiscard]] double offset_s(std::size_t frame) const;
  [[nodiscard]] double begin_s() const { return begin_s_; }
  [[nodiscard]] double end_s() const { return end_s_; }
  /// Whether session time is true time since the session's start.
  [[nodiscard]] bool isClockTime() const { return isClockTime_; }

 private:
  std::vector<double> offsets_s_;
  double begin_s_ = 0.0;
  double end_s_ = 0.0;
  bool isClockTime_ = false;
};

}  // namespace ferrule
