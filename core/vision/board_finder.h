// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <opencv2/core/mat.hpp>
#include <span>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/base/progress.h"
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

/// Reads stills and keeps those that show the board. Pictures are taken as the sensor gave them: an orientation note in
/// the file is not followed, since the lens belongs to the sensor.
/// Errors: those of checkBoard; FileMissing, FileEmpty, NotAnImage, ImageSizesMixed; BoardNotFound (none shows it),
/// BoardLayoutOld, ImageMirrored (none shows it, and this is why); Cancelled.
[[nodiscard]] Result<std::vector<BoardView>> viewsOfBoard(const Board& board, std::span<const std::string> stills,
                                                          const JobControl& job = {});

}  // namespace ferrule
