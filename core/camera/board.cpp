// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/board.h"

#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <string_view>

#include "core/base/contract.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kLeastCorners = 3;  // along one side
constexpr int kMostCorners = 100;
constexpr double kSmallest_mm = 1.0;
constexpr double kLargest_mm = 1000.0;

std::vector<std::string_view> split(std::string_view text, char at) {
  std::vector<std::string_view> parts;
  for (;;) {
    const auto place = text.find(at);
    parts.push_back(text.substr(0, place));
    if (place == std::string_view::npos) return parts;
    text.remove_prefix(place + 1);
  }
}

template <class Number>
std::optional<Number> number(std::string_view text) {
  Number value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return value;
}

/// 0 for what is not a count of corners or squares.
int count(std::string_view text) {
  const int value = number<int>(text).value_or(0);
  return value >= kLeastCorners && value <= kMostCorners ? value : 0;
}

std::optional<double> length_m(std::string_view text) {
  const auto value = number<double>(text);
  if (!value || !(*value >= kSmallest_mm && *value <= kLargest_mm)) return std::nullopt;
  return metresFromMillimetres(*value);
}

}  // namespace

TablePoint3 Board::corner(int index) const {
  FERRULE_REQUIRE(index >= 0 && index < cornerCount());
  return {square_m * (index % columns), square_m * (index / columns), 0.0};
}

Result<Board> parseBoard(const std::string& text) {
  const auto parts = split(text, ':');
  Board board;
  board.text = text;
  const bool charuco = parts[0] == "charuco";
  if (!(charuco && parts.size() == 5) && !(parts[0] == "chessboard" && parts.size() == 3)) {
    return failure(ErrorCode::BoardMalformed, text, "form");
  }
  board.kind = charuco ? Board::Kind::Charuco : Board::Kind::Chessboard;

  const auto counts = split(parts[1], 'x');
  const int columns = count(counts.front());
  const int rows = counts.size() == 2 ? count(counts.back()) : 0;
  if (columns == 0 || rows == 0) return failure(ErrorCode::BoardMalformed, text, "count");
  board.columns = charuco ? columns - 1 : columns;
  board.rows = charuco ? rows - 1 : rows;

  const auto square = length_m(parts[2]);
  if (!square) return failure(ErrorCode::BoardMalformed, text, "square");
  board.square_m = *square;
  if (charuco) {
    const auto marker = length_m(parts[3]);
    if (!marker || !(*marker < *square)) return failure(ErrorCode::BoardMalformed, text, "marker");
    board.marker_m = *marker;
    board.dictionary = parts[4];
  }
  return board;
}

Result<Board> boardAsPrinted(const Board& board, const RulerReading& ruler) {
  // "Fit to page" shrinks by some percent; paper that was printed for another size by more. Common practice, no source.
  constexpr double kMostOff = 0.25;
  constexpr double kMostStretch_m = 0.0007;
  for (const double reading_m : {ruler.across_m, ruler.down_m}) {
    if (reading_m >= (1.0 - kMostOff) * kRuler_m && reading_m <= (1.0 + kMostOff) * kRuler_m) continue;
    return failure(ErrorCode::FieldInvalid, board.text, "ruler",
                   {millimetresFromMetres(reading_m), millimetresFromMetres((1.0 - kMostOff) * kRuler_m),
                    millimetresFromMetres((1.0 + kMostOff) * kRuler_m)});
  }
  if (std::abs(ruler.across_m - ruler.down_m) > kMostStretch_m) {
    return failure(ErrorCode::BoardMalformed, board.text, "stretched",
                   {millimetresFromMetres(ruler.across_m), millimetresFromMetres(ruler.down_m)});
  }
  const double scale = 0.5 * (ruler.across_m + ruler.down_m) / kRuler_m;
  if (scale == 1.0) return board;
  Board printed = board;
  printed.square_m *= scale;
  printed.marker_m *= scale;
  printed.text = boardText(printed);
  return printed;
}

std::string boardText(const Board& board) {
  const auto mm = [](double length_m) {
    std::array<char, 32> text{};
    // To a thousandth of a millimetre, without zeros at the end.
    const double rounded_mm = std::round(1000.0 * millimetresFromMetres(length_m)) / 1000.0;
    const auto [end, error] = std::to_chars(text.data(), text.data() + text.size(), rounded_mm);
    return error == std::errc() ? std::string(text.data(), end) : std::string();
  };
  const bool charuco = board.kind == Board::Kind::Charuco;
  const int more = charuco ? 1 : 0;
  std::string text = charuco ? "charuco:" : "chessboard:";
  text += std::to_string(board.columns + more);
  text += 'x';
  text += std::to_string(board.rows + more);
  text += ':';
  text += mm(board.square_m);
  if (!charuco) return text;
  text += ':';
  text += mm(board.marker_m);
  text += ':';
  text += board.dictionary;
  return text;
}

}  // namespace ferrule
