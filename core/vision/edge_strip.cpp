// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/edge_strip.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// Rows of the strip that are averaged against the picture's noise.
constexpr int kRowsTogether = 5;
/// The slope of brightness is taken over so many steps to each side, about the width of an edge.
constexpr int kSlopeReach = 2;
/// The slope's middle is taken over so many steps to each side of its top: two pixels and a half.
constexpr int kMiddleReach = 5;
/// Grey levels that an edge must rise by.
constexpr float kLeastContrast = 5.0F;
/// What a path of edges loses for a step to the side, grey levels.
constexpr float kSideStepCost = 2.0F;
constexpr int kMostSideSteps = 2;
/// Never reject what is nearer than this to the smooth curve through the edges, in steps across.
constexpr double kOutlier = 0.8;

/// How fast the strip gets lighter (sign 1) or darker (sign -1) going inward.
cv::Mat slopes(const cv::Mat& light, float sign) {
  cv::Mat slope(light.size(), CV_32F, cv::Scalar(0.0F));
  for (int row = 0; row < light.rows; ++row) {
    const auto* from = light.ptr<float>(row);
    auto* to = slope.ptr<float>(row);
    for (int column = kSlopeReach; column < light.cols - kSlopeReach; ++column)
      to[column] = std::max(0.0F, sign * (from[column + kSlopeReach] - from[column - kSlopeReach]));
  }
  return slope;
}

struct Path {
  std::vector<int> columns;  ///< one a row
  float score = 0.0F;
};

/// The connected way down the rows along which the slope is greatest (dynamic programming; of equals, the leftmost).
Path bestPath(const cv::Mat& slope) {
  cv::Mat total = slope.clone();
  cv::Mat cameBy(slope.size(), CV_8S, cv::Scalar(0));
  for (int row = 1; row < slope.rows; ++row) {
    for (int column = 0; column < slope.cols; ++column) {
      float best = -1.0F;
      for (int step = -kMostSideSteps; step <= kMostSideSteps; ++step) {
        const int before = column + step;
        if (before < 0 || before >= slope.cols) continue;
        const float value = total.at<float>(row - 1, before) - kSideStepCost * static_cast<float>(std::abs(step));
        if (value <= best) continue;
        best = value;
        cameBy.at<signed char>(row, column) = static_cast<signed char>(step);
      }
      total.at<float>(row, column) += best;
    }
  }
  const auto* last = total.ptr<float>(slope.rows - 1);
  Path path;
  path.columns.resize(static_cast<std::size_t>(slope.rows));
  int column = static_cast<int>(std::max_element(last, last + slope.cols) - last);
  path.score = last[column];
  for (int row = slope.rows - 1; row >= 0; --row) {
    path.columns[static_cast<std::size_t>(row)] = column;
    column += cameBy.at<signed char>(row, column);
  }
  return path;
}

/// The middle of the slope of each row about the path. The middle, not the top: a top between two columns leans to the
/// nearest pixel's centre.
std::vector<StripEdge> edgesAlong(const cv::Mat& slope, const Path& path) {
  std::vector<StripEdge> edges;
  for (int row = 0; row < slope.rows; ++row) {
    const int top = path.columns[static_cast<std::size_t>(row)];
    const auto* s = slope.ptr<float>(row);
    if (top < kMiddleReach || top + kMiddleReach >= slope.cols || s[top] < kLeastContrast) continue;
    double sum = 0.0;
    double moment = 0.0;
    for (int step = -kMiddleReach; step <= kMiddleReach; ++step) {
      sum += s[top + step];
      moment += step * static_cast<double>(s[top + step]);
    }
    edges.push_back({static_cast<double>(row), top + moment / sum});
  }
  return edges;
}

/// Leaves out what lies off the smooth curve through most edges: balls, hands, marks. A lens bends no line more sharply
/// than a curve of the third degree follows.
std::vector<StripEdge> smoothPart(std::vector<StripEdge> edges) {
  constexpr int kRounds = 4;
  constexpr int kDegree = 3;
  for (int round = 0; round < kRounds && edges.size() > 2 * kDegree; ++round) {
    std::vector<double> off = missesOfPolynomial(edges, kDegree);
    for (double& miss : off)
      miss = std::abs(miss);
    edges = withoutOutliers(edges, off, kOutlier);
  }
  return edges;
}

}  // namespace

cv::Mat stripOf(const cv::Mat& light, int rows, int columns, const StripPlace& place) {
  // A little longer for the averaging, and cut afterwards.
  constexpr int kMargin = kRowsTogether / 2;
  cv::Mat x(rows + 2 * kMargin, columns, CV_32F, cv::Scalar(-10.0F));
  cv::Mat y(x.size(), CV_32F, cv::Scalar(-10.0F));
  for (int row = 0; row < x.rows; ++row) {
    for (int column = 0; column < columns; ++column) {
      const auto pixel = place(row - kMargin, column);
      if (!pixel) continue;
      x.at<float>(row, column) = static_cast<float>(pixel->x);
      y.at<float>(row, column) = static_cast<float>(pixel->y);
    }
  }
  cv::Mat strip;
  cv::remap(light, strip, x, y, cv::INTER_LINEAR, cv::BORDER_REPLICATE);
  cv::blur(strip, strip, {1, kRowsTogether});
  return strip.rowRange(kMargin, kMargin + rows);
}

FollowedEdge followEdge(const cv::Mat& strip, EdgeKind kind) {
  const cv::Mat slope = slopes(strip, kind == EdgeKind::Lighter ? 1.0F : -1.0F);
  const Path path = bestPath(slope);
  return {smoothPart(edgesAlong(slope, path)), path.score / static_cast<double>(strip.rows)};
}

std::vector<double> missesOfPolynomial(const std::vector<StripEdge>& edges, int degree) {
  const auto n = static_cast<Eigen::Index>(edges.size());
  Eigen::MatrixXd powers(n, degree + 1);
  Eigen::VectorXd columns(n);
  for (Eigen::Index i = 0; i < n; ++i) {
    const StripEdge& edge = edges[static_cast<std::size_t>(i)];
    const double u = edge.row / edges.back().row;
    powers(i, 0) = 1.0;
    for (int k = 1; k <= degree; ++k)
      powers(i, k) = powers(i, k - 1) * u;
    columns[i] = edge.column;
  }
  const Eigen::VectorXd left = columns - powers * powers.colPivHouseholderQr().solve(columns);
  return {left.data(), left.data() + left.size()};
}

cv::Mat medianPicture(const std::vector<cv::Mat>& pictures) {
  cv::Mat median(pictures.front().size(), pictures.front().type());
  const auto bytes = static_cast<std::size_t>(median.cols * median.channels());
  std::vector<unsigned char> values(pictures.size());
  for (int row = 0; row < median.rows; ++row) {
    for (std::size_t i = 0; i < bytes; ++i) {
      for (std::size_t p = 0; p < pictures.size(); ++p)
        values[p] = pictures[p].ptr(row)[i];
      const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
      std::nth_element(values.begin(), middle, values.end());
      median.ptr(row)[i] = *middle;
    }
  }
  return median;
}

}  // namespace ferrule
