// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>
#include <vector>

#include "core/camera/board.h"

namespace ferrule {

/// A dark rectangle of a print, m from the pattern's top left corner, y down.
struct PrintedRectangle {
  double x_m = 0.0;
  double y_m = 0.0;
  double width_m = 0.0;
  double height_m = 0.0;

  bool operator==(const PrintedRectangle&) const = default;
};

/// A board as it is printed: dark squares, and for ChArUco the markers on the light ones in OpenCV 4.6's layout.
/// Errors: those of checkBoard.
[[nodiscard]] Result<std::vector<PrintedRectangle>> printedBoard(const Board& board);

/// One tag whose black square has this side. Errors: BoardMalformed (subject: the dictionary; detail "dictionary", or
/// "markers": it has no tag of this id).
[[nodiscard]] Result<std::vector<PrintedRectangle>> printedTag(std::string_view dictionary, int id, double side_m);

/// Width and height of a board with its outer squares, m.
struct PrintedSize {
  double width_m = 0.0;
  double height_m = 0.0;
};
[[nodiscard]] PrintedSize printedSize(const Board& board);

}  // namespace ferrule
