// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>

namespace ferrule {

/// How much the place of a ball that nothing touches wavers from image to image: noise and compression of this film.
class PatchCalm {
 public:
  /// difference: BallTrack::patchDifference of a resting ball, touched or not. What is higher than most counts little.
  void learn(double difference) {
    constexpr double kDown = 0.2;
    constexpr double kUp = 0.01;
    if (usual_ < 0.0) usual_ = difference;
    usual_ += (difference < usual_ ? kDown : kUp) * (std::min(difference, 2.0 * usual_ + 1.0) - usual_);
  }
  /// Whether a difference is no more than the film's own wavering: a ball that moves by half a pixel differs by more.
  [[nodiscard]] bool isCalm(double difference) const {
    constexpr double kLeast = 1.5;  // what a good film's compression adds by itself
    constexpr double kMore = 1.3;
    return difference < std::max(kLeast, kMore * usual_);
  }

 private:
  double usual_ = -1.0;  ///< mean grey levels; below 0: none seen
};

}  // namespace ferrule
