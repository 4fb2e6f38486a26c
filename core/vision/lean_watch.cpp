// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/lean_watch.h"

#include <cmath>
#include <opencv2/imgproc.hpp>
#include <utility>

namespace ferrule {

namespace {

/// Grey levels from bare cloth: more than light and shadow do, less than skin, sleeves and hair.
constexpr double kNotCloth = 30.0;
/// What is narrower is a cue or a line of light.
constexpr double kCue_m = 0.045;
/// A person is joined to the cushion within so much.
constexpr double kRim_m = 0.03;

cv::Mat disc(double diameter_px) {
  const int side = std::max(3, static_cast<int>(std::lround(diameter_px)) | 1);
  return cv::getStructuringElement(cv::MORPH_ELLIPSE, {side, side});
}

}  // namespace

LeanWatch::LeanWatch(std::shared_ptr<const Rig> rig, const MeasuredTable& measured)
    : rig_(std::move(rig)),
      radius_m_(measured.balls.radius_m()),
      scale_(smallScaleFor(*rig_, radius_m_)),
      cloth_(*rig_, measured.table, scale_) {
  const auto a = imageFromTable(*rig_, {-0.1, 0.0, 0.0});
  const auto b = imageFromTable(*rig_, {0.1, 0.0, 0.0});
  if (a && b) metresPerPixel_ = 0.2 * scale_.factor / distance(*a, *b);
}

std::optional<bool> LeanWatch::look(const cv::Mat& picture) {
  const bool now = leans(picture);
  if (last_ == now) return std::nullopt;
  last_ = now;
  return now;
}

bool LeanWatch::leans(const cv::Mat& picture) {
  if (!(metresPerPixel_ > 0.0)) return false;
  cv::Mat small;
  cv::resize(picture, small, {picture.cols / scale_.factor, picture.rows / scale_.factor}, 0, 0, cv::INTER_AREA);
  if (!std::exchange(started_, true)) cloth_.start(small);
  cv::Mat hidden = cloth_.difference(small) > kNotCloth;
  cloth_.learn(small, hidden);
  cv::morphologyEx(hidden, hidden, cv::MORPH_OPEN, disc(kCue_m / metresPerPixel_));
  cv::Mat inner;
  cv::erode(cloth_.surface(), inner, disc(2.0 * kRim_m / metresPerPixel_), {-1, -1}, 1, cv::BORDER_CONSTANT,
            cv::Scalar::all(0));
  cv::Mat parts, figures, middles;
  const int count = cv::connectedComponentsWithStats(hidden, parts, figures, middles, 8, CV_32S);
  for (int part = 1; part < count; ++part) {
    const double area_m2 = figures.at<int>(part, cv::CC_STAT_AREA) * metresPerPixel_ * metresPerPixel_;
    if (area_m2 < kLeastHidden_m2) continue;
    const cv::Mat atRim = (parts == part) & (inner == 0);
    if (cv::countNonZero(atRim) > 0) return true;
  }
  return false;
}

}  // namespace ferrule
