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
    : surface_(surfaceMask(rig, table, scale)) {}

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

cv::Mat ClothModel::difference(const cv::Mat& small) const {
  cv::Mat apart;
  cv::absdiff(small, cloth_, apart);
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
  return {static_cast<float>(pixel[0]), static_cast<float>(pixel[1]), static_cast<float>(pixel[2])};
}

void ClothModel::learn(const cv::Mat& small, const cv::Mat& occupied) {
  for (int y = 0; y < small.rows; ++y) {
    const uchar* in = small.ptr<uchar>(y);
    const uchar* keepOut = occupied.ptr<uchar>(y);
    const uchar* s = surface_.ptr<uchar>(y);
    auto* exact = clothExact_.ptr<float>(y);
    uchar* rounded = cloth_.ptr<uchar>(y);
    for (int x = 0; x < small.cols; ++x) {
      if (keepOut[x] || !s[x]) continue;
      float most = 0.0F;
      for (int c = 0; c < 3; ++c)
        most = std::max(most, std::abs(static_cast<float>(in[3 * x + c]) - exact[3 * x + c]));
      if (most > kLearnReach) continue;
      for (int c = 0; c < 3; ++c) {
        float& e = exact[3 * x + c];
        e += static_cast<float>(kLearnRate) * (static_cast<float>(in[3 * x + c]) - e);
        rounded[3 * x + c] = static_cast<uchar>(e + 0.5F);
      }
    }
  }
}

}  // namespace ferrule
