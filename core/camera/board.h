// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/camera/lens.h"
#include "core/geometry/frames.h"

namespace ferrule {

/// A printed calibration board.
struct Board {
  enum class Kind { Chessboard, Charuco };

  Kind kind = Kind::Chessboard;
  int columns = 0;  ///< of INNER corners, where four squares meet
  int rows = 0;
  double square_m = 0.0;
  double marker_m = 0.0;   ///< ChArUco only
  std::string dictionary;  ///< ChArUco only
  std::string text;        ///< as it was given

  [[nodiscard]] int cornerCount() const { return columns * rows; }
  /// An inner corner's place on the board, m: x right, y down the print, z 0. index: row by row.
  [[nodiscard]] TablePoint3 corner(int index) const;

  bool operator==(const Board&) const = default;
};

/// "chessboard:COLUMNSxROWS:SQUARE" counts inner corners, "charuco:COLUMNSxROWS:SQUARE:MARKER:DICTIONARY" counts
/// squares; lengths in mm. Errors: BoardMalformed (subject: the text, detail: what is wrong with it: "form", "count",
/// "square", "marker").
[[nodiscard]] Result<Board> parseBoard(const std::string& text);

/// A board in the form that parseBoard reads, lengths to a thousandth of a millimetre.
[[nodiscard]] std::string boardText(const Board& board);

/// The lines that a print of a board carries, to check the printer: as long as this when it is drawn true to scale.
inline constexpr double kRuler_m = 0.100;

/// Those lines as a steel rule reads them on the paper, m.
struct RulerReading {
  double across_m = kRuler_m;
  double down_m = kRuler_m;

  bool operator==(const RulerReading&) const = default;
};

/// The board as it came out of the printer: squares and markers larger or smaller in proportion, and its text with
/// them. The lens itself does not depend on the board's size; a board that was stretched one way bends it. Errors:
/// FieldInvalid (subject: the board's text; detail "ruler"; numbers: reading, least, most, mm): no printer is so far
/// off, so that another line was measured; BoardMalformed (detail "stretched"): both lines differ by more than a
/// reading to half a millimetre explains.
[[nodiscard]] Result<Board> boardAsPrinted(const Board& board, const RulerReading& ruler);

/// One inner corner as it is seen.
struct BoardCorner {
  int index = 0;  ///< as for Board::corner
  ImagePoint pixel;

  bool operator==(const BoardCorner&) const = default;
};

/// One still of a board.
struct BoardView {
  std::string still;  ///< its file
  ImageSize size;
  std::vector<BoardCorner> corners;

  bool operator==(const BoardView&) const = default;
};

}  // namespace ferrule
