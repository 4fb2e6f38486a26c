// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/not_cloth.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace ferrule {

namespace {

constexpr int kAngles = 32;
/// Shares of the radius at which is looked: beside the outline, but out of what blur mixes.
constexpr std::array kInside{0.80, 0.92};
constexpr std::array kOutside{1.08, 1.22};
/// Grey levels of a well lit film: from where on something is no cloth, and surely none.
constexpr float kDoubtful = 6.0F;
constexpr float kSure = 18.0F;

float between(float value, float none, float all) {
  return std::clamp((value - none) / (all - none), 0.0F, 1.0F);
}

bool within(ImagePoint point, const std::vector<Silhouette>& others) {
  return std::ranges::any_of(others, [&](const Silhouette& other) {
    const double radius_px = 1.05 * other.radius_px();
    return distance(point, other.centre) < radius_px;
  });
}

}  // namespace

NotCloth::NotCloth(const cv::Mat& picture, const ClothDistance& distance)
    : foreign_(picture.rows, picture.cols, CV_8U) {
  const float doubtful = kDoubtful * distance.exposure();
  const float sure = kSure * distance.exposure();
  for (int y = 0; y < picture.rows; ++y) {
    const auto* from = picture.ptr<cv::Vec3b>(y);
    auto* to = foreign_.ptr<uchar>(y);
    for (int x = 0; x < picture.cols; ++x) {
      const float away = distance(Eigen::Vector3f(from[x][0], from[x][1], from[x][2]));
      to[x] = cv::saturate_cast<uchar>(255.0F * between(away, doubtful, sure));
    }
  }
}

double NotCloth::contrast(const Silhouette& outline, const std::vector<Silhouette>& others) const {
  static const auto directions = [] {
    std::array<std::pair<double, double>, kAngles> all{};
    for (std::size_t i = 0; i < kAngles; ++i) {
      const double angle = 2.0 * std::numbers::pi * static_cast<double>(i) / kAngles;
      all[i] = {std::cos(angle), std::sin(angle)};
    }
    return all;
  }();
  const auto mean = [&](const std::array<double, 2>& shares) {
    int sum = 0;
    int count = 0;
    for (const auto& [cosine, sine] : directions) {
      for (const double share : shares) {
        const ImagePoint point = outline.at(cosine, sine, share);
        const int x = static_cast<int>(std::lround(point.x));
        const int y = static_cast<int>(std::lround(point.y));
        if (x < 0 || y < 0 || x >= foreign_.cols || y >= foreign_.rows || within(point, others)) continue;
        sum += foreign_.at<uchar>(y, x);
        ++count;
      }
    }
    return count > 0 ? sum / (255.0 * count) : 0.0;
  };
  return mean(kInside) - mean(kOutside);
}

}  // namespace ferrule
