// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/picture_noise.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <opencv2/imgproc.hpp>

#include "core/base/contract.h"
#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// Prime to the blocks of any compression, so that their borders are met no more often than they are there.
constexpr int kRowStep = 13;
constexpr int kColumnStep = 7;
constexpr int kMostDifference = 2048;

/// The smallest value that half of all stay at or below, interpolated within it.
double medianOf(const std::array<long, kMostDifference>& counts, long all) {
  const double half = static_cast<double>(all) / 2.0;
  double below = 0.0;
  for (std::size_t value = 0; value < counts.size(); ++value) {
    const auto here = static_cast<double>(counts[value]);
    if (below + here >= half) {
      // A whole number stands for half a level to either side; nought has but one side.
      const double share = here > 0.0 ? (half - below) / here : 0.0;
      return value == 0 ? 0.5 * share : static_cast<double>(value) - 0.5 + share;
    }
    below += here;
  }
  return kMostDifference;
}

}  // namespace

double sensorNoiseOf(const cv::Mat& picture) {
  FERRULE_REQUIRE(picture.type() == CV_8UC3);
  constexpr double kGain = 6.0;  // the root of the kernel's squares: 1 -2 1 times 1 -2 1
  std::array<std::array<long, kMostDifference>, 3> counts{};
  long all = 0;
  for (int y = 1; y + 1 < picture.rows; y += kRowStep) {
    const uchar* above = picture.ptr<uchar>(y - 1);
    const uchar* here = picture.ptr<uchar>(y);
    const uchar* below = picture.ptr<uchar>(y + 1);
    for (int x = 1; x + 1 < picture.cols; x += kColumnStep) {
      for (int c = 0; c < 3; ++c) {
        const int l = 3 * (x - 1) + c;
        const int m = 3 * x + c;
        const int r = 3 * (x + 1) + c;
        const int bend = above[l] - 2 * above[m] + above[r] - 2 * (here[l] - 2 * here[m] + here[r]) + below[l] -
                         2 * below[m] + below[r];
        ++counts[static_cast<std::size_t>(c)][static_cast<std::size_t>(std::min(std::abs(bend), kMostDifference - 1))];
      }
      ++all;
    }
  }
  if (all == 0) return 0.0;
  std::array<double, 3> noise{};
  for (std::size_t c = 0; c < 3; ++c)
    noise[c] = kDeviationFromMedian * medianOf(counts[c], all) / kGain;
  std::ranges::sort(noise);
  return noise[1];
}

cv::Mat NoiseSmoother::quiet(const cv::Mat& picture) {
  // A ball's edge is the place of a change of 20 grey levels or more over two pixels; noise of a tenth of that moves
  // single rays by less than the picture's own grain does.
  constexpr double kMuch = 2.0;
  constexpr double kBackAgain = 0.75;  // of it
  constexpr int kInterval = 8;         // images between measurements
  constexpr double kRate = 0.2;
  if (images_++ % kInterval == 0) {
    const double now = sensorNoiseOf(picture);
    noise_ = noise_ < 0.0 ? now : noise_ + kRate * (now - noise_);
    smooths_ = noise_ > (smooths_ ? kBackAgain : 1.0) * kMuch;
  }
  if (!smooths_) return picture;
  // Leaves 28 % of the noise.
  cv::Mat smooth;
  cv::GaussianBlur(picture, smooth, {5, 5}, 1.0, 1.0, cv::BORDER_REPLICATE);
  return smooth;
}

}  // namespace ferrule
