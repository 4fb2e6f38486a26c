// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <vector>

#include "core/base/error.h"
#include "core/camera/board.h"

namespace ferrule {

/// What one picture shows of a board.
struct BoardSight {
  enum class Kind {
    Found,
    None,
    LayoutOld,  ///< markers of this board, but on the other colour of square: printed before OpenCV 4.6
    Mirrored,   ///< the flipped picture shows the board
  };
  Kind kind = Kind::None;
  std::vector<BoardCorner> corners;  ///< only when found; refined, in the project's pixel convention

  bool operator==(const BoardSight&) const = default;
};

/// Looks for a board in an 8-bit grey picture. A plain chessboard cannot tell a mirrored picture.
/// The board's dictionary, if any, must be known (see checkBoard).
[[nodiscard]] BoardSight findBoard(const Board& board, const cv::Mat& grey);

/// Errors: BoardMalformed (detail: "dictionary", or "markers": more squares than the dictionary has markers).
[[nodiscard]] Result<void> checkBoard(const Board& board);

}  // namespace ferrule
