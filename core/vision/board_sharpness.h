// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core.hpp>
#include <optional>
#include <span>

#include "core/camera/board.h"

namespace ferrule {

/// How wide the edges of a board's squares are in a picture.
struct BoardSharpness {
  /// Standard deviation of the edges, px: half the way from 16 to 84 % of their step, in the worse of both directions
  /// (a hand that shakes blurs one). A sharp picture has less than 1.
  double edge_px = 0.0;
  /// What the squares are too small to tell from worse, px.
  double most_px = 0.0;

  /// Too blurred to be measured from: corners of such edges scatter, and what shook while it was exposed lies at no one
  /// place. Common practice, no source.
  [[nodiscard]] bool isBlurred() const;
  bool operator==(const BoardSharpness&) const = default;
};

/// grey: 8-bit. Nothing where the squares are too few or too small in the picture to tell.
[[nodiscard]] std::optional<BoardSharpness> boardSharpness(const Board& board, const cv::Mat& grey,
                                                           std::span<const BoardCorner> corners);

}  // namespace ferrule
