// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <functional>
#include <optional>
#include <vector>

#include "core/measure/reading_source.h"

namespace ferrule::synthetic {

/// A film that never was: the cue ball rolls from rest along +x after each strike and stops by rolling friction, the 3
/// lies still, and the 8 is carried for a while. 60 images a second.
class Readings : public ReadingSource {
 public:
  explicit Readings(long images) : images_(images) {}

  /// Called before each image; for cancelling in the middle.
  std::function<void(long)> beforeImage;

  std::optional<std::vector<ImageReading>> next() override {
    if (next_ == images_) return std::nullopt;
    if (beforeImage) beforeImage(next_);
    const ImageReading reading = at(next_);
    ++next_;
    progress_ = {next_, reading.time_s, static_cast<double>(next_) / static_cast<double>(images_)};
    return std::vector{reading};
  }
  SourceProgress progress() const override { return progress_; }

  static ImageReading at(long image) {
    ImageReading reading{image, static_cast<double>(image) / 60.0, {}};
    reading.balls.push_back({kCueBall, cuePosition(reading.time_s), 0.0004, image % 11 != 5, false});
    reading.balls.push_back({BallName(3), {0.3, -0.2}, 0.0003, true, false});
    if (image >= 20 && image < 30) reading.balls.push_back({BallName(8), {0.1, 0.3}, 0.002, true, true});
    return reading;
  }

  /// Strikes at 2 s and every 10 s after: back and forth along y = 0.3, rolling all the way.
  static TablePoint cuePosition(double time_s) {
    constexpr double kStart_m = -0.6;
    constexpr double kSpeed_mps = 0.5;
    constexpr double kDeceleration_mps2 = 0.15;  // rolls 0.83 m in 3.33 s
    double x_m = kStart_m;
    int shot = 0;
    for (double strike_s = 2.0; strike_s < time_s; strike_s += 10.0, ++shot) {
      const double rolled_s = std::min(time_s - strike_s, kSpeed_mps / kDeceleration_mps2);
      const double way_m = kSpeed_mps * rolled_s - 0.5 * kDeceleration_mps2 * rolled_s * rolled_s;
      x_m += shot % 2 == 0 ? way_m : -way_m;
    }
    return {x_m, 0.3};
  }

 private:
  long images_ = 0;
  long next_ = 0;
  SourceProgress progress_;
};

}  // namespace ferrule::synthetic
