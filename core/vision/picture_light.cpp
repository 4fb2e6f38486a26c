// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/picture_light.h"

#include <algorithm>
#include <array>

#include "core/base/contract.h"

namespace ferrule {

namespace {

constexpr int kStep = 4;
constexpr double kDarkBright = 70.0;
constexpr double kDarkMiddle = 18.0;
constexpr int kBurnt = 252;
constexpr double kMostBurnt = 0.04;
constexpr double kFastBall_mps = 4.0;

double quantile(const std::array<long, 256>& counts, long all, double share) {
  long below = 0;
  for (std::size_t value = 0; value < counts.size(); ++value) {
    below += counts[value];
    if (static_cast<double>(below) >= share * static_cast<double>(all)) return static_cast<double>(value);
  }
  return 255.0;
}

}  // namespace

PictureLight lightOf(const cv::Mat& picture) {
  FERRULE_REQUIRE(picture.type() == CV_8UC3);
  std::array<long, 256> counts{};
  long all = 0;
  long burnt = 0;
  for (int row = 0; row < picture.rows; row += kStep) {
    const auto* pixels = picture.ptr<cv::Vec3b>(row);
    for (int column = 0; column < picture.cols; column += kStep) {
      const cv::Vec3b& pixel = pixels[column];
      // Rec. 601 weights, in 256ths.
      const int luma = (29 * pixel[0] + 150 * pixel[1] + 77 * pixel[2]) >> 8;
      ++counts[static_cast<std::size_t>(luma)];
      ++all;
      if (std::min({pixel[0], pixel[1], pixel[2]}) >= kBurnt) ++burnt;
    }
  }
  if (all == 0) return {};
  return {quantile(counts, all, 0.5), quantile(counts, all, 0.98),
          static_cast<double>(burnt) / static_cast<double>(all)};
}

LightFault faultOf(const PictureLight& light) {
  if (light.bright < kDarkBright || light.middle < kDarkMiddle) return LightFault::TooDark;
  if (light.burntShare > kMostBurnt) return LightFault::TooBright;
  return LightFault::None;
}

bool smearsFastBalls(double exposure_s, double ballRadius_m) {
  return exposure_s * kFastBall_mps > ballRadius_m;
}

}  // namespace ferrule
