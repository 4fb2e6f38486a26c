// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/cloth_outline.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// The search happens in a picture of about this width.
constexpr double kSmallWidth_px = 640.0;
/// Colour differences in a and b of CIE L*a*b* between which cloth and not-cloth are parted by Otsu's rule.
constexpr double kLeastParting = 6.0;
constexpr double kMostParting = 30.0;
/// The darkest cloth, in shadow, has this share of the lightness of its middle; pockets are darker.
constexpr double kLeastLightness = 0.35;
/// A table fills at least this share of a picture that is of any use.
constexpr double kLeastShare = 0.1;
/// Shares of a side that belong to the corner pockets, and of a long side to the side pocket.
constexpr double kCornerShare = 0.10;
constexpr double kMiddleShare = 0.06;
constexpr std::size_t kLeastPlaces = 20;

/// The commonest colour of the middle of the picture. lab: 8-bit.
cv::Vec3d clothColour(const cv::Mat& lab) {
  const cv::Mat middle = lab(cv::Rect(lab.cols / 4, lab.rows / 4, lab.cols / 2, lab.rows / 2));
  constexpr int kBin = 4;
  cv::Mat counts = cv::Mat::zeros(256 / kBin, 256 / kBin, CV_32S);
  for (int row = 0; row < middle.rows; ++row) {
    const auto* p = middle.ptr<cv::Vec3b>(row);
    for (int column = 0; column < middle.cols; ++column)
      ++counts.at<int>(p[column][1] / kBin, p[column][2] / kBin);
  }
  cv::Point top;
  cv::Mat smooth;
  counts.convertTo(smooth, CV_32F);
  cv::blur(smooth, smooth, {3, 3});
  cv::minMaxLoc(smooth, nullptr, nullptr, nullptr, &top);
  cv::Vec3d sum(0, 0, 0);
  double n = 0.0;
  for (int row = 0; row < middle.rows; ++row) {
    const auto* p = middle.ptr<cv::Vec3b>(row);
    for (int column = 0; column < middle.cols; ++column) {
      if (std::abs(p[column][1] / kBin - top.y) > 1 || std::abs(p[column][2] / kBin - top.x) > 1) continue;
      sum += cv::Vec3d(p[column][0], p[column][1], p[column][2]);
      n += 1.0;
    }
  }
  return sum / std::max(n, 1.0);
}

cv::Mat clothMask(const cv::Mat& small) {
  cv::Mat lab;
  cv::cvtColor(small, lab, cv::COLOR_BGR2Lab);
  const cv::Vec3d cloth = clothColour(lab);
  cv::Mat apart(lab.size(), CV_8U);
  for (int row = 0; row < lab.rows; ++row) {
    const auto* p = lab.ptr<cv::Vec3b>(row);
    for (int column = 0; column < lab.cols; ++column) {
      const double colour = std::hypot(p[column][1] - cloth[1], p[column][2] - cloth[2]);
      apart.at<uchar>(row, column) = cv::saturate_cast<uchar>(2.0 * std::min(colour, 2.0 * kMostParting));
    }
  }
  cv::Mat mask;
  const double otsu = cv::threshold(apart, mask, 0, 255, cv::THRESH_BINARY | cv::THRESH_OTSU) / 2.0;
  mask = apart <= 2.0 * std::clamp(otsu, kLeastParting, kMostParting);
  std::vector<cv::Mat> channels;
  cv::split(lab, channels);
  mask.setTo(0, channels[0] < kLeastLightness * cloth[0]);
  // Seams, chalk and the shadow under a nose close; thin bridges to things of the same colour open.
  const cv::Mat disc = cv::getStructuringElement(cv::MORPH_ELLIPSE, {7, 7});
  cv::morphologyEx(mask, mask, cv::MORPH_CLOSE, disc);
  cv::morphologyEx(mask, mask, cv::MORPH_OPEN, disc);
  return mask;
}

/// Robust parabola through places (along, across): least squares, refitted without what stands off.
std::optional<std::array<double, 3>> parabola(std::vector<cv::Point2d> places) {
  constexpr int kRounds = 6;
  constexpr double kNear_px = 1.0;
  std::array<double, 3> c{};
  for (int round = 0; round < kRounds; ++round) {
    if (places.size() < kLeastPlaces) return std::nullopt;
    Eigen::MatrixXd powers(static_cast<Eigen::Index>(places.size()), 3);
    Eigen::VectorXd across(powers.rows());
    for (Eigen::Index i = 0; i < powers.rows(); ++i) {
      const cv::Point2d& p = places[static_cast<std::size_t>(i)];
      powers.row(i) << 1.0, p.x, p.x * p.x;
      across[i] = p.y;
    }
    const Eigen::Vector3d fit = powers.colPivHouseholderQr().solve(across);
    const Eigen::VectorXd left = (across - powers * fit).cwiseAbs();
    c = {fit[0], fit[1], fit[2]};
    places = withoutOutliers(places, {left.data(), left.data() + left.size()}, kNear_px);
  }
  return c;
}

double valueOf(const std::array<double, 3>& side, double along) {
  return side[0] + along * (side[1] + along * side[2]);
}

}  // namespace

std::optional<ClothOutline> ClothOutline::find(const cv::Mat& picture) {
  const int factor = std::max(1, static_cast<int>(std::lround(picture.cols / kSmallWidth_px)));
  cv::Mat small;
  cv::resize(picture, small, {picture.cols / factor, picture.rows / factor}, 0, 0, cv::INTER_AREA);
  std::vector<std::vector<cv::Point>> contours;
  cv::findContours(clothMask(small), contours, cv::RETR_EXTERNAL, cv::CHAIN_APPROX_NONE);
  const auto largest =
      std::ranges::max_element(contours, {}, [](const auto& contour) { return cv::contourArea(contour); });
  if (largest == contours.end() || cv::contourArea(*largest) < kLeastShare * small.cols * small.rows) {
    return std::nullopt;
  }
  const cv::RotatedRect box = cv::minAreaRect(*largest);
  double angle = box.angle * std::numbers::pi / 180.0;
  double halfLength = 0.5 * box.size.width;
  double halfWidth = 0.5 * box.size.height;
  if (halfWidth > halfLength) {
    std::swap(halfLength, halfWidth);
    angle += 0.5 * std::numbers::pi;
  }
  ClothOutline outline;
  outline.axis_ = {std::cos(angle), std::sin(angle)};
  if (outline.axis_.x < 0.0) outline.axis_ = -outline.axis_;
  const auto full = [&](double v) { return (v + 0.5) * factor - 0.5; };
  outline.centre_ = {full(box.center.x), full(box.center.y)};
  halfLength *= factor;
  halfWidth *= factor;

  std::array<std::vector<cv::Point2d>, 4> places;
  for (const cv::Point& pixel : *largest) {
    const ImageVector from = ImagePoint{full(pixel.x), full(pixel.y)} - outline.centre_;
    const double along = dot(from, outline.axis_);
    const double across = dot(from, perpendicular(outline.axis_));
    const double u = along / halfLength;
    const double v = across / halfWidth;
    const bool longSide = std::abs(v) > std::abs(u);
    const double where = std::abs(longSide ? u : v);
    if (where > 1.0 - 2.0 * kCornerShare || (longSide && where < 2.0 * kMiddleShare)) continue;
    if (longSide) {
      places[v < 0.0 ? 0 : 1].emplace_back(along, across);
    } else {
      places[u < 0.0 ? 2 : 3].emplace_back(across, along);
    }
  }
  for (std::size_t side = 0; side < 4; ++side) {
    const auto fit = parabola(places[side]);
    if (!fit) return std::nullopt;
    outline.sides_[side] = *fit;
  }
  if (!outline.meet()) return std::nullopt;
  return outline;
}

bool ClothOutline::meet() {
  for (std::size_t corner = 0; corner < 4; ++corner) {
    const auto& alongU = sides_[corner / 2];
    const auto& alongV = sides_[2 + corner % 2];
    ImageVector p{valueOf(alongV, 0.0), valueOf(alongU, 0.0)};
    for (int step = 0; step < 50; ++step)
      p = {valueOf(alongV, p.y), valueOf(alongU, p.x)};
    if (!std::isfinite(p.x) || !std::isfinite(p.y)) return false;
    corners_[corner] = p;
  }
  return corners_[1].x > corners_[0].x && corners_[3].x > corners_[2].x && corners_[2].y > corners_[0].y &&
         corners_[3].y > corners_[1].y;
}

ImagePoint ClothOutline::at(double u, double v) const {
  const auto between = [](ImageVector a, ImageVector b, double share) { return a + share * (b - a); };
  const auto alongU = [&](std::size_t side) {
    const double x = between(corners_[2 * side], corners_[2 * side + 1], u).x;
    return ImageVector{x, valueOf(sides_[side], x)};
  };
  const auto alongV = [&](std::size_t side) {
    const double y = between(corners_[side], corners_[side + 2], v).y;
    return ImageVector{valueOf(sides_[2 + side], y), y};
  };
  const ImageVector ruledV = between(alongU(0), alongU(1), v);
  const ImageVector ruledU = between(alongV(0), alongV(1), u);
  const ImageVector both = between(between(corners_[0], corners_[1], u), between(corners_[2], corners_[3], u), v);
  const ImageVector p = ruledV + ruledU - both;
  return centre_ + (p.x * axis_ + p.y * perpendicular(axis_));
}

}  // namespace ferrule
