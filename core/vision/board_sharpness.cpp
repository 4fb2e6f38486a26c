// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/board_sharpness.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numeric>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr double kMostEdge_px = 2.0;
/// A step that fills its whole window comes out at 0.54 of half the window; nearer than this it may be any width.
constexpr double kMostOfWindow = 0.45;
/// Half a window as a share of a square's side, and of the white rim around a ChArUco marker.
constexpr double kPerSquare = 0.35;
constexpr double kPerRim = 0.8;
constexpr double kLeastHalf_px = 1.8;
constexpr double kStep_px = 0.25;
constexpr std::size_t kLeastEdges = 4;
/// A board of less is too dim to tell, grey levels.
constexpr double kLeastContrast = 20.0;
/// A step of less than this share of the board's own contrast was smeared over more than its window.
constexpr double kLeastStep = 0.35;
constexpr double kFilled = 0.54;  ///< of half the window: how wide such a step comes out

double lightAt(const cv::Mat& grey, double x, double y) {
  const int left = static_cast<int>(std::floor(x));
  const int top = static_cast<int>(std::floor(y));
  const double right = x - left;
  const double below = y - top;
  const auto at = [&](int column, int row) {
    return static_cast<double>(grey.at<uchar>(std::clamp(row, 0, grey.rows - 1), std::clamp(column, 0, grey.cols - 1)));
  };
  return (1.0 - below) * ((1.0 - right) * at(left, top) + right * at(left + 1, top)) +
         below * ((1.0 - right) * at(left, top + 1) + right * at(left + 1, top + 1));
}

/// Where a profile first passes a level, in steps, between its values.
double crossing(const std::vector<double>& profile, double level) {
  for (std::size_t i = 1; i < profile.size(); ++i) {
    if (profile[i] < level) continue;
    const double rise = profile[i] - profile[i - 1];
    return static_cast<double>(i) - (rise > 0.0 ? (profile[i] - level) / rise : 0.0);
  }
  return static_cast<double>(profile.size());
}

/// Between the dark and the light parts of the board, without the outermost twentieths.
double contrastOf(const cv::Mat& grey, std::span<const BoardCorner> corners) {
  std::vector<cv::Point2f> places;
  for (const BoardCorner& corner : corners)
    places.emplace_back(static_cast<float>(corner.pixel.x), static_cast<float>(corner.pixel.y));
  const cv::Rect all(0, 0, grey.cols, grey.rows);
  const cv::Rect box = cv::boundingRect(places) & all;
  std::vector<uchar> values;
  for (int row = box.y; row < box.y + box.height; ++row)
    values.insert(values.end(), grey.ptr<uchar>(row) + box.x, grey.ptr<uchar>(row) + box.x + box.width);
  if (values.empty()) return 0.0;
  const auto at = [&](double share) {
    const auto place = values.begin() + static_cast<std::ptrdiff_t>(share * static_cast<double>(values.size() - 1));
    std::ranges::nth_element(values, place);
    return static_cast<double>(*place);
  };
  const double dark = at(0.05);
  return at(0.95) - dark;
}

/// The edge between two neighbouring corners, averaged along its middle. contrast: of the board.
double edgeWidth_px(const cv::Mat& grey, ImagePoint from, ImagePoint to, double half_px, double contrast) {
  const ImageVector along = to - from;
  const double length_px = std::hypot(along.x, along.y);
  const ImageVector across{-along.y / length_px, along.x / length_px};
  constexpr std::array kAlong{0.35, 0.40, 0.45, 0.50, 0.55, 0.60, 0.65};
  const int steps = static_cast<int>(std::floor(half_px / kStep_px));
  std::vector<double> profile(static_cast<std::size_t>(2 * steps + 1), 0.0);
  for (const double share : kAlong) {
    const ImagePoint middle = from + share * along;
    for (int i = -steps; i <= steps; ++i) {
      const double off = i * kStep_px;
      profile[static_cast<std::size_t>(i + steps)] +=
          lightAt(grey, middle.x + off * across.x, middle.y + off * across.y) / kAlong.size();
    }
  }
  if (profile.front() > profile.back()) std::ranges::reverse(profile);
  const std::size_t ends = std::max<std::size_t>(1, profile.size() / 5);
  const double low = std::accumulate(profile.begin(), profile.begin() + static_cast<std::ptrdiff_t>(ends), 0.0) /
                     static_cast<double>(ends);
  const double high = std::accumulate(profile.end() - static_cast<std::ptrdiff_t>(ends), profile.end(), 0.0) /
                      static_cast<double>(ends);
  if (high - low < kLeastStep * contrast) return kFilled * half_px;
  constexpr double kOneBelow = 0.158655;  // of a Gaussian's area, one standard deviation below the middle
  const double from_step = crossing(profile, low + kOneBelow * (high - low));
  const double to_step = crossing(profile, high - kOneBelow * (high - low));
  return 0.5 * kStep_px * std::max(0.0, to_step - from_step);
}

}  // namespace

bool BoardSharpness::isBlurred() const {
  return edge_px > std::min(kMostEdge_px, most_px);
}

std::optional<BoardSharpness> boardSharpness(const Board& board, const cv::Mat& grey,
                                             std::span<const BoardCorner> corners) {
  std::map<int, ImagePoint> places;
  for (const BoardCorner& corner : corners)
    places[corner.index] = corner.pixel;
  const double rim = 0.5 * (board.square_m - board.marker_m) / board.square_m;
  const double share = board.kind == Board::Kind::Charuco ? std::min(kPerSquare, kPerRim * rim) : kPerSquare;
  std::optional<BoardSharpness> result;
  const double contrast = contrastOf(grey, corners);
  if (contrast < kLeastContrast) return result;
  for (const int step : {1, board.columns}) {
    std::vector<double> widths_px;
    std::vector<double> halves_px;
    for (const auto& [index, place] : places) {
      if (step == 1 && index % board.columns == board.columns - 1) continue;
      const auto next = places.find(index + step);
      if (next == places.end()) continue;
      const double half_px = share * distance(place, next->second);
      if (half_px < kLeastHalf_px) continue;
      widths_px.push_back(edgeWidth_px(grey, place, next->second, half_px, contrast));
      halves_px.push_back(half_px);
    }
    if (widths_px.size() < kLeastEdges) continue;
    const BoardSharpness one{median(widths_px), kMostOfWindow * median(halves_px)};
    if (!result || one.edge_px > result->edge_px) result = one;
  }
  return result;
}

}  // namespace ferrule
