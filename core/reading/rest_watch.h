// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <optional>
#include <vector>

#include "core/reading/measured_path.h"

namespace ferrule {

/// Follows one ball image by image and tells whether it lies still, where, and how it leaves its place.
///
/// Decides over a window of time, never over two images: the noise of a position must not look like motion, and a slow
/// roll must not look like rest. Memory is bounded.
class RestWatch {
 public:
  /// sample: null when the reading does not hold the ball.
  void add(double time_s, const BallSample* sample);

  /// Lies still, or was hidden while it lay still.
  [[nodiscard]] bool still() const { return still_; }
  /// Cannot hold up the end of a shot: still, or away for so long that waiting makes no sense.
  [[nodiscard]] bool settled(double patience_s) const;
  /// Where it lies or last lay still.
  [[nodiscard]] const std::optional<RestingPlace>& place() const { return place_; }
  /// Since when place() holds, s.
  [[nodiscard]] double placedSince_s() const { return placedSince_s_; }
  /// The measured points since it left its place, oldest first; empty while it lies there.
  [[nodiscard]] const std::vector<PathPoint>& departure() const { return departure_; }
  /// The last time it was measured at its place, s.
  [[nodiscard]] double lastAtPlace_s() const { return lastAtPlace_s_; }
  /// The last measured point.
  [[nodiscard]] const std::optional<PathPoint>& latest() const { return latest_; }
  [[nodiscard]] double now_s() const { return now_s_; }
  /// Whether a person held it, or it was away for long, since it last lay still.
  [[nodiscard]] bool wasTaken() const { return taken_; }
  /// Whether it was taken before it came to lie where it lies.
  [[nodiscard]] bool wasPutDown() const { return putDown_; }

 private:
  void measure(const PathPoint& point);
  /// Takes the place from the window.
  void settle();
  [[nodiscard]] bool windowIsStill() const;

  std::deque<PathPoint> window_;
  std::optional<RestingPlace> place_;
  double weight_ = 0.0;
  double placedSince_s_ = 0.0;
  double lastAtPlace_s_ = 0.0;
  std::vector<PathPoint> departure_;
  std::optional<PathPoint> latest_;
  double now_s_ = 0.0;
  bool still_ = false;
  bool taken_ = false;
  bool putDown_ = false;
};

/// How long a ball must be seen without moving before it counts as still, s. The slowest roll that passes for rest
/// ends within this time at the least rolling friction (0.005).
inline constexpr double kStillWindow_s = 0.3;
/// How long a place is taken from the latest window alone, s: a hand may still be adjusting, a roll just ending.
inline constexpr double kSettling_s = 0.6;

}  // namespace ferrule
