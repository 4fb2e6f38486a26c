// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/nose_survey.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// Rounded ends of a cushion, left out.
constexpr double kEndLeftOut_m = 0.06;
/// How far off a nose may be seen: less than a cushion's width, so that the rail's edge is never taken for it.
constexpr double kReach_m = 0.045;
constexpr double kAlong_px = 2.0;
constexpr double kAcross_px = 0.5;
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
/// Share of a nose that must be seen.
constexpr double kLeastShare = 0.5;
/// Never reject what is nearer than this to the smooth curve through the edges, in steps across.
constexpr double kOutlier = 0.8;

/// The plane of the nose's height along one nose: rows go along it, columns across, from outside to inside.
struct Strip {
  cv::Mat light;
  double along_m = 0.0;   ///< from row to row
  double across_m = 0.0;  ///< from column to column
};

std::optional<Strip> stripOf(const cv::Mat& light, const Rig& rig, const Table& table, const Cushion& cushion) {
  const TableVector whole = cushion.nose.end - cushion.nose.start;
  const TableVector along = unit(whole);
  const double length_m = length(whole) - 2.0 * kEndLeftOut_m;
  const TablePoint middle = cushion.nose.start + 0.5 * whole;
  const auto seen = imageFromTable(rig, {middle.x, middle.y, table.noseHeight_m});
  const TablePoint inside = middle + 0.01 * cushion.inward;
  const auto seenInside = imageFromTable(rig, {inside.x, inside.y, table.noseHeight_m});
  if (!seen || !seenInside || !(length_m > 0.0)) return std::nullopt;
  const double scale_pxpm = distance(*seen, *seenInside) / 0.01;
  Strip strip;
  strip.along_m = kAlong_px / scale_pxpm;
  strip.across_m = kAcross_px / scale_pxpm;
  const int rows = static_cast<int>(length_m / strip.along_m);
  const int half = static_cast<int>(kReach_m / strip.across_m);
  if (rows < 4 * kRowsTogether || half < 4 * kSlopeReach) return std::nullopt;
  // A little longer for the averaging, and cut afterwards.
  constexpr int kMargin = kRowsTogether / 2;
  cv::Mat x(rows + 2 * kMargin, 2 * half + 1, CV_32F, cv::Scalar(-10.0F));
  cv::Mat y(x.size(), CV_32F, cv::Scalar(-10.0F));
  for (int row = 0; row < x.rows; ++row) {
    for (int column = 0; column < x.cols; ++column) {
      const TablePoint p = cushion.nose.start + (kEndLeftOut_m + (row - kMargin) * strip.along_m) * along +
                           ((column - half) * strip.across_m) * cushion.inward;
      const auto pixel = imageFromTable(rig, {p.x, p.y, table.noseHeight_m});
      if (!pixel) continue;
      x.at<float>(row, column) = static_cast<float>(pixel->x);
      y.at<float>(row, column) = static_cast<float>(pixel->y);
    }
  }
  cv::remap(light, strip.light, x, y, cv::INTER_LINEAR, cv::BORDER_REPLICATE);
  cv::blur(strip.light, strip.light, {1, kRowsTogether});
  strip.light = strip.light.rowRange(kMargin, kMargin + rows);
  return strip;
}

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

/// An edge in the strip's steps.
struct Edge {
  double row = 0.0;
  double column = 0.0;
};

/// The middle of the slope of each row about the path. The middle, not the top: a top between two columns leans to the
/// nearest pixel's centre.
std::vector<Edge> edgesAlong(const cv::Mat& slope, const Path& path) {
  std::vector<Edge> edges;
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

/// Misses of the edges from the best polynomial of a degree.
std::vector<double> misses(const std::vector<Edge>& edges, int degree) {
  const auto n = static_cast<Eigen::Index>(edges.size());
  Eigen::MatrixXd powers(n, degree + 1);
  Eigen::VectorXd columns(n);
  for (Eigen::Index i = 0; i < n; ++i) {
    const Edge& edge = edges[static_cast<std::size_t>(i)];
    const double u = edge.row / edges.back().row;
    powers(i, 0) = 1.0;
    for (int k = 1; k <= degree; ++k)
      powers(i, k) = powers(i, k - 1) * u;
    columns[i] = edge.column;
  }
  const Eigen::VectorXd left = columns - powers * powers.colPivHouseholderQr().solve(columns);
  return {left.data(), left.data() + left.size()};
}

/// Leaves out what lies off the smooth curve through most edges: balls, hands, marks. A lens bends no line more sharply
/// than a curve of the third degree follows.
std::vector<Edge> smoothPart(std::vector<Edge> edges) {
  constexpr int kRounds = 4;
  constexpr int kDegree = 3;
  for (int round = 0; round < kRounds && edges.size() > 2 * kDegree; ++round) {
    std::vector<double> off = misses(edges, kDegree);
    for (double& miss : off)
      miss = std::abs(miss);
    edges = withoutOutliers(edges, off, kOutlier);
  }
  return edges;
}

cv::Mat medianOf(const std::vector<cv::Mat>& pictures) {
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

}  // namespace

std::optional<NoseStraightness> straightnessOf(const cv::Mat& light, const Rig& rig, const Table& table,
                                               const Cushion& cushion) {
  const auto strip = stripOf(light, rig, table, cushion);
  if (!strip) return std::nullopt;
  // The nose is lighter or darker than the cloth below it, by the lamps; the clearer of the two is taken.
  const cv::Mat lighter = slopes(strip->light, 1.0F);
  const cv::Mat darker = slopes(strip->light, -1.0F);
  const Path up = bestPath(lighter);
  const Path down = bestPath(darker);
  const bool rises = up.score > down.score;
  const std::vector<Edge> edges = smoothPart(edgesAlong(rises ? lighter : darker, rises ? up : down));
  if (static_cast<double>(edges.size()) < kLeastShare * strip->light.rows) return std::nullopt;

  NoseStraightness result;
  result.cushion = cushion.name;
  result.places = static_cast<int>(edges.size());
  double sum = 0.0;
  for (const double miss : misses(edges, 1)) {
    sum += miss * miss;
    result.max_m = std::max(result.max_m, std::abs(miss) * strip->across_m);
  }
  result.rms_m = std::sqrt(sum / static_cast<double>(edges.size())) * strip->across_m;
  return result;
}

void NoseSurvey::add(const cv::Mat& picture) {
  pictures_.push_back(picture.clone());
}

std::vector<NoseStraightness> NoseSurvey::result(const Rig& rig, const Table& table) const {
  std::vector<NoseStraightness> noses;
  if (pictures_.empty()) return noses;
  cv::Mat grey, light;
  cv::cvtColor(medianOf(pictures_), grey, cv::COLOR_BGR2GRAY);
  grey.convertTo(light, CV_32F);
  for (const Cushion& cushion : cushions(table)) {
    if (const auto nose = straightnessOf(light, rig, table, cushion)) noses.push_back(*nose);
  }
  return noses;
}

}  // namespace ferrule
