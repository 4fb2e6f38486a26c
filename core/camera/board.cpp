// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/board.h"

#include <charconv>
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

}  // namespace ferrule
