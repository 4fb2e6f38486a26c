// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/cloth_model.h"

#include <Eigen/Dense>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/camera/silhouette.h"
#include "core/vision/not_cloth.h"
#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr int kCell_px = 8;           ///< of the small picture
constexpr double kLearnReach = 16.0;  ///< grey levels; what differs more is not cloth
constexpr double kLearnRate = 1.0 / 12.0;

cv::Mat surfaceMask(const Rig& rig, const Table& table, SmallScale scale) {
  // The border is walked in steps, since the lens bends it.
  constexpr int kSteps = 24;
  const double x = table.length_m / 2.0;
  const double y = table.width_m / 2.0;
  const std::array<TablePoint, 5> corners{{{-x, -y}, {x, -y}, {x, y}, {-x, y}, {-x, -y}}};
  std::vector<cv::Point> border;
  for (std::size_t side = 0; side + 1 < corners.size(); ++side) {
    for (int i = 0; i < kSteps; ++i) {
      const TablePoint at = corners[side] + (static_cast<double>(i) / kSteps) * (corners[side + 1] - corners[side]);
      const auto seen = imageFromTable(rig, {at.x, at.y, 0.0});
      if (!seen) continue;
      const ImagePoint small = scale.toSmall(*seen);
      border.emplace_back(static_cast<int>(std::lround(small.x)), static_cast<int>(std::lround(small.y)));
    }
  }
  cv::Mat mask = cv::Mat::zeros(rig.lens.size.height / scale.factor, rig.lens.size.width / scale.factor, CV_8U);
  if (border.size() > 2) cv::fillPoly(mask, std::vector<std::vector<cv::Point>>{border}, cv::Scalar(255));
  for (const Pocket& pocket : pockets(table)) {
    std::vector<cv::Point> rim;
    for (int i = 0; i < kSteps; ++i) {
      const double angle = 2.0 * std::numbers::pi * i / kSteps;
      const TablePoint at = pocket.hole + pocket.holeRadius_m * TableVector{std::cos(angle), std::sin(angle)};
      const auto seen = imageFromTable(rig, {at.x, at.y, 0.0});
      if (!seen) continue;
      const ImagePoint small = scale.toSmall(*seen);
      rim.emplace_back(static_cast<int>(std::lround(small.x)), static_cast<int>(std::lround(small.y)));
    }
    if (rim.size() > 2) cv::fillPoly(mask, std::vector<std::vector<cv::Point>>{rim}, cv::Scalar(0));
  }
  return mask;
}

/// The median colour of each cell that lies wholly on the surface.
struct Cell {
  double x = 0.0;
  double y = 0.0;
  Eigen::Vector3d colour = Eigen::Vector3d::Zero();
  bool cloth = true;
};

std::vector<Cell> cellsOf(const cv::Mat& small, const cv::Mat& surface) {
  std::vector<Cell> cells;
  for (int top = 0; top + kCell_px <= small.rows; top += kCell_px) {
    for (int left = 0; left + kCell_px <= small.cols; left += kCell_px) {
      const cv::Rect area(left, top, kCell_px, kCell_px);
      if (cv::countNonZero(surface(area)) < kCell_px * kCell_px) continue;
      Cell cell;
      cell.x = left + (kCell_px - 1) / 2.0;
      cell.y = top + (kCell_px - 1) / 2.0;
      for (int c = 0; c < 3; ++c) {
        std::array<uchar, kCell_px * kCell_px> values{};
        std::size_t n = 0;
        for (int y = top; y < top + kCell_px; ++y) {
          const uchar* row = small.ptr<uchar>(y);
          for (int x = left; x < left + kCell_px; ++x)
            values[n++] = row[3 * x + c];
        }
        std::nth_element(values.begin(), values.begin() + n / 2, values.end());
        cell.colour[c] = values[n / 2];
      }
      cells.push_back(cell);
    }
  }
  return cells;
}

/// Marks the cells that are not cloth: a quadratic surface a channel, refitted without the cells that miss it.
void markCloth(std::vector<Cell>& cells, int width, int height) {
  if (cells.size() < 20) return;
  const auto terms = [&](const Cell& cell) {
    const double u = 2.0 * cell.x / width - 1.0;
    const double v = 2.0 * cell.y / height - 1.0;
    Eigen::Matrix<double, 6, 1> t;
    t << 1.0, u, v, u * u, u * v, v * v;
    return t;
  };
  // The commonest colour is the cloth's; start from its neighbourhood.
  std::array<double, 3> middle{};
  for (int c = 0; c < 3; ++c) {
    std::vector<double> values;
    for (const Cell& cell : cells)
      values.push_back(cell.colour[c]);
    std::nth_element(values.begin(), values.begin() + static_cast<long>(values.size() / 2), values.end());
    middle[static_cast<std::size_t>(c)] = values[values.size() / 2];
  }
  double reach = 60.0;
  Eigen::Matrix<double, 6, 3> fit = Eigen::Matrix<double, 6, 3>::Zero();
  for (int c = 0; c < 3; ++c)
    fit(0, c) = middle[static_cast<std::size_t>(c)];
  for (int round = 0; round < 6; ++round) {
    Eigen::Matrix<double, 6, 6> normal = Eigen::Matrix<double, 6, 6>::Identity() * 1e-3;
    Eigen::Matrix<double, 6, 3> right = Eigen::Matrix<double, 6, 3>::Zero();
    for (Cell& cell : cells) {
      const auto t = terms(cell);
      const double miss = (fit.transpose() * t - cell.colour).cwiseAbs().maxCoeff();
      cell.cloth = miss < reach;
      if (!cell.cloth) continue;
      normal += t * t.transpose();
      right += t * cell.colour.transpose();
    }
    fit = normal.ldlt().solve(right);
    reach = std::max(12.0, reach * 0.7);
  }
}

}  // namespace

SmallScale smallScaleFor(const Rig& rig, double radius_m) {
  const auto outline = silhouetteOf(rig, {0.0, 0.0}, radius_m);
  const double radius_px = outline ? outline->radius_px() : 14.0;
  return {std::clamp(static_cast<int>(radius_px / 6.5), 1, 6)};
}

ClothModel::ClothModel(const Rig& rig, const Table& table, SmallScale scale)
    : scale_(scale), surface_(surfaceMask(rig, table, scale)) {}

void ClothModel::start(const cv::Mat& small) {
  std::vector<Cell> cells = cellsOf(small, surface_);
  markCloth(cells, small.cols, small.rows);
  // The cloth cells, smoothed over their neighbours and spread to every pixel.
  const int columns = small.cols / kCell_px + 1;
  const int rows = small.rows / kCell_px + 1;
  cv::Mat sum = cv::Mat::zeros(rows, columns, CV_32FC3);
  cv::Mat weight = cv::Mat::zeros(rows, columns, CV_32F);
  for (const Cell& cell : cells) {
    if (!cell.cloth) continue;
    const int row = static_cast<int>(cell.y) / kCell_px;
    const int column = static_cast<int>(cell.x) / kCell_px;
    sum.at<cv::Vec3f>(row, column) = {static_cast<float>(cell.colour[0]), static_cast<float>(cell.colour[1]),
                                      static_cast<float>(cell.colour[2])};
    weight.at<float>(row, column) = 1.0F;
  }
  cv::Mat nearSum;
  cv::Mat nearWeight;
  cv::Mat farSum;
  cv::Mat farWeight;
  cv::GaussianBlur(sum, nearSum, {0, 0}, 1.5);
  cv::GaussianBlur(weight, nearWeight, {0, 0}, 1.5);
  cv::GaussianBlur(sum, farSum, {0, 0}, 8.0);
  cv::GaussianBlur(weight, farWeight, {0, 0}, 8.0);
  // Where a person or a cluster covers many cells, the wider surroundings fill in.
  constexpr float kFarShare = 0.02F;
  cv::Mat smooth(rows, columns, CV_32FC3);
  for (int r = 0; r < rows; ++r) {
    for (int c = 0; c < columns; ++c) {
      const float w = nearWeight.at<float>(r, c) + kFarShare * farWeight.at<float>(r, c) + 1e-6F;
      smooth.at<cv::Vec3f>(r, c) = (nearSum.at<cv::Vec3f>(r, c) + farSum.at<cv::Vec3f>(r, c) * kFarShare) * (1.0F / w);
    }
  }
  cv::resize(smooth, clothExact_, {columns * kCell_px, rows * kCell_px}, 0, 0, cv::INTER_LINEAR);
  clothExact_ = clothExact_(cv::Rect(0, 0, small.cols, small.rows)).clone();
  clothExact_.convertTo(cloth_, CV_8UC3);
  takeEvenness();
  // What looks like cloth at once is taken as it is, with its dust and spots.
  const cv::Mat away = difference(small);
  for (int y = 0; y < small.rows; ++y) {
    const uchar* d = away.ptr<uchar>(y);
    const uchar* in = small.ptr<uchar>(y);
    auto* out = clothExact_.ptr<float>(y);
    for (int x = 0; x < small.cols; ++x) {
      if (d[x] >= 8) continue;
      for (int c = 0; c < 3; ++c)
        out[3 * x + c] = in[3 * x + c];
    }
  }
  clothExact_.convertTo(cloth_, CV_8UC3);
}

void ClothModel::takeEvenness() {
  // A cushion's shade beside it is none on the ball's upper side: only what changes over a large part of the table
  // counts.
  constexpr int kShrink = 8;
  constexpr double kWide = 0.12;  // of the picture's width
  const cv::Size size((surface_.cols + kShrink - 1) / kShrink, (surface_.rows + kShrink - 1) / kShrink);
  cv::Mat bright;
  cv::transform(clothExact_, bright, cv::Matx13f(1.0F, 1.0F, 1.0F));
  cv::Mat weight;
  surface_.convertTo(weight, CV_32F, 1.0 / 255.0);
  bright = bright.mul(weight);
  cv::resize(bright, bright, size, 0, 0, cv::INTER_AREA);
  cv::resize(weight, weight, size, 0, 0, cv::INTER_AREA);
  std::vector<double> values;
  for (int y = 0; y < size.height; ++y) {
    for (int x = 0; x < size.width; ++x) {
      const float w = weight.at<float>(y, x);
      if (w > 0.5F) values.push_back(bright.at<float>(y, x) / w);
    }
  }
  const double middle = values.empty() ? 0.0 : median(values);
  // Of three channels' sum a length, as if they were alike: what is left over is the colour's.
  exposure_ = ClothDistance::exposureOf(static_cast<float>(middle / std::numbers::sqrt3));
  const double sigma = kWide * size.width;
  cv::GaussianBlur(bright, bright, {0, 0}, sigma);
  cv::GaussianBlur(weight, weight, {0, 0}, sigma);
  cv::Mat even(size, CV_32F, cv::Scalar(1.0F));
  for (int y = 0; y < size.height && middle > 0.0; ++y) {
    for (int x = 0; x < size.width; ++x) {
      const float w = weight.at<float>(y, x);
      if (w > 1e-3F) even.at<float>(y, x) = bright.at<float>(y, x) / w / static_cast<float>(middle);
    }
  }
  cv::resize(even, evenness_, surface_.size(), 0, 0, cv::INTER_LINEAR);
}

Eigen::Array3f ClothModel::lightAt(ImagePoint small) const {
  // Beyond these it is no light that makes the cloth so dark or bright.
  constexpr float kDarkest = 0.3F;
  constexpr float kBrightest = 2.0F;
  const int x = std::clamp(static_cast<int>(std::lround(small.x)), 0, evenness_.cols - 1);
  const int y = std::clamp(static_cast<int>(std::lround(small.y)), 0, evenness_.rows - 1);
  return gain_ * std::clamp(evenness_.at<float>(y, x), kDarkest, kBrightest);
}

void ClothModel::meet(const cv::Mat& picture) {
  constexpr int kStep_px = 6;          // of the small picture, between the places that are looked at
  constexpr float kLeastLevel = 4.0F;  // darker channels tell no factor
  constexpr std::size_t kFewest = 50;  // places
  constexpr double kMostly = 0.5;      // of the places must agree, else something covers the table
  constexpr float kLargeChange = 0.15F;
  constexpr double kStillThere = 0.2;      // of the places
  constexpr double kRounded = 2.0;         // grey levels
  constexpr double kQuarterBeyond = 1.69;  // what the largest of three normal deviates exceeds in one case of four
  constexpr double kRate = 0.1;
  struct Place {
    Eigen::Array3f seen;
    Eigen::Array3f cloth;
  };
  std::vector<Place> places;
  const auto pixels = static_cast<float>(scale_.factor * scale_.factor);
  for (int y = kStep_px / 2; y < surface_.rows; y += kStep_px) {
    for (int x = kStep_px / 2; x < surface_.cols; x += kStep_px) {
      if (!surface_.at<uchar>(y, x)) continue;
      Eigen::Array3f sum = Eigen::Array3f::Zero();
      for (int row = y * scale_.factor; row < (y + 1) * scale_.factor; ++row) {
        const uchar* in = picture.ptr<uchar>(row) + 3 * x * scale_.factor;
        for (int i = 0; i < scale_.factor; ++i, in += 3)
          sum += Eigen::Array3f(in[0], in[1], in[2]);
      }
      const auto& cloth = clothExact_.at<cv::Vec3f>(y, x);
      places.push_back({sum / pixels, {cloth[0], cloth[1], cloth[2]}});
    }
  }
  if (places.size() < kFewest) return;
  Eigen::Array3f gain = gain_;
  std::vector<double> values;
  for (int c = 0; c < 3; ++c) {
    values.clear();
    for (const Place& place : places) {
      if (place.cloth[c] > kLeastLevel) values.push_back(place.seen[c] / place.cloth[c]);
    }
    if (values.size() >= kFewest) gain[c] = static_cast<float>(median(values));
  }
  const auto misses = [&](const Eigen::Array3f& light) {
    std::vector<double> apart;
    apart.reserve(places.size());
    for (const Place& place : places)
      apart.push_back((place.seen - light * place.cloth).abs().maxCoeff());
    return apart;
  };
  const auto agreeing = [](const std::vector<double>& apart, double reach) {
    const auto count = std::ranges::count_if(apart, [&](double away) { return away < reach; });
    return static_cast<double>(count) / static_cast<double>(apart.size());
  };
  values = misses(gain);
  if (agreeing(values, kLearnReach) < kMostly) return;
  // Lamps change all of the cloth; where much of it is as it was, something large lies over the rest.
  if ((gain / gain_ - 1.0F).abs().maxCoeff() > kLargeChange &&
      agreeing(misses(gain_), kRounded + 3.0 * noise_) > kStillThere)
    return;
  gain_ = gain;
  // Of those that agree: balls and people are not the cloth's noise.
  std::erase_if(values, [](double away) { return away >= kLearnReach; });
  const auto quarter = values.begin() + static_cast<std::ptrdiff_t>(3 * values.size() / 4);
  std::nth_element(values.begin(), quarter, values.end());
  const double now = *quarter / kQuarterBeyond;
  noise_ += (noiseIsKnown_ ? kRate : 1.0) * (now - noise_);
  noiseIsKnown_ = true;
}

int ClothModel::clearly() const {
  constexpr double kLeast = 13.0;
  constexpr double kDeviations = 6.0;
  return static_cast<int>(std::max(kLeast * exposure_, kDeviations * noise_));
}

int ClothModel::faintly() const {
  constexpr double kLeast = 6.0;  // dust, and the weave of cloth
  constexpr double kDeviations = 3.5;
  return static_cast<int>(std::max(kLeast * exposure_, kDeviations * noise_));
}

cv::Mat ClothModel::difference(const cv::Mat& small) const {
  cv::Mat apart;
  if ((gain_ == 1.0F).all()) {
    cv::absdiff(small, cloth_, apart);
  } else {
    cv::multiply(cloth_, cv::Scalar(gain_[0], gain_[1], gain_[2]), apart);
    cv::absdiff(small, apart, apart);
  }
  std::array<cv::Mat, 3> channels;
  cv::split(apart, channels.data());
  cv::Mat away = cv::max(channels[0], cv::max(channels[1], channels[2]));
  cv::bitwise_and(away, surface_, away);
  return away;
}

Eigen::Vector3f ClothModel::colourAt(ImagePoint small) const {
  const int x = std::clamp(static_cast<int>(std::lround(small.x)), 0, cloth_.cols - 1);
  const int y = std::clamp(static_cast<int>(std::lround(small.y)), 0, cloth_.rows - 1);
  const uchar* pixel = cloth_.ptr<uchar>(y) + 3 * x;
  return gain_ * Eigen::Array3f(pixel[0], pixel[1], pixel[2]);
}

void ClothModel::learn(const cv::Mat& small, const cv::Mat& occupied) {
  const std::array<float, 3> ungained{1.0F / gain_[0], 1.0F / gain_[1], 1.0F / gain_[2]};
  for (int y = 0; y < small.rows; ++y) {
    const uchar* in = small.ptr<uchar>(y);
    const uchar* keepOut = occupied.ptr<uchar>(y);
    const uchar* s = surface_.ptr<uchar>(y);
    auto* exact = clothExact_.ptr<float>(y);
    uchar* rounded = cloth_.ptr<uchar>(y);
    for (int x = 0; x < small.cols; ++x) {
      if (keepOut[x] || !s[x]) continue;
      std::array<float, 3> apart{};
      float most = 0.0F;
      for (std::size_t c = 0; c < 3; ++c) {
        apart[c] =
            ungained[c] * static_cast<float>(in[3 * x + static_cast<int>(c)]) - exact[3 * x + static_cast<int>(c)];
        most = std::max(most, std::abs(apart[c]) * gain_[static_cast<Eigen::Index>(c)]);
      }
      if (most > kLearnReach) continue;
      for (int c = 0; c < 3; ++c) {
        float& e = exact[3 * x + c];
        e += static_cast<float>(kLearnRate) * apart[static_cast<std::size_t>(c)];
        rounded[3 * x + c] = static_cast<uchar>(e + 0.5F);
      }
    }
  }
}

}  // namespace ferrule
