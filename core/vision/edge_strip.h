// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <opencv2/core/mat.hpp>
#include <optional>
#include <vector>

#include "core/geometry/frames.h"

namespace ferrule {

/// A band of a picture laid out straight: rows go along a line, columns across it.
using StripPlace = std::function<std::optional<ImagePoint>(double row, double column)>;

/// Where an edge crosses a row of a strip.
struct StripEdge {
  double row = 0.0;
  double column = 0.0;

  bool operator==(const StripEdge&) const = default;
};

enum class EdgeKind { Lighter, Darker };  ///< with rising columns

/// An edge followed down a strip.
struct FollowedEdge {
  std::vector<StripEdge> places;  ///< at most one a row, in order
  double contrast = 0.0;          ///< grey levels, mean along the path
};

/// A strip needs so many rows and so many columns to either side of its middle.
inline constexpr int kLeastStripRows = 20;
inline constexpr int kLeastHalfStrip = 8;

/// The strip's light, averaged over a few rows against noise. light: CV_32F, one channel. What lies outside the picture
/// repeats its border.
[[nodiscard]] cv::Mat stripOf(const cv::Mat& light, int rows, int columns, const StripPlace& place);

/// The connected edge of greatest slope down the strip, without what stands off its smooth part (balls, hands, marks).
[[nodiscard]] FollowedEdge followEdge(const cv::Mat& strip, EdgeKind kind);

/// Misses of the edges from the best polynomial of a degree, columns.
[[nodiscard]] std::vector<double> missesOfPolynomial(const std::vector<StripEdge>& edges, int degree);

/// Median over pictures of one size and type (8-bit), pixel by pixel: what moves falls out. pictures: at least one.
[[nodiscard]] cv::Mat medianPicture(const std::vector<cv::Mat>& pictures);

}  // namespace ferrule
