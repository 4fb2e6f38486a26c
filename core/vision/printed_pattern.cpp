// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/printed_pattern.h"

#include <opencv2/aruco.hpp>

#include "core/vision/board_finder.h"
#include "core/vision/tag_finder.h"

namespace ferrule {

namespace {

/// The dark modules of a marker, row by row in runs, its black square with the corner at (x, y).
void addMarker(std::vector<PrintedRectangle>& dark, const cv::Ptr<cv::aruco::Dictionary>& dictionary, int id,
               double side_m, double x_m, double y_m) {
  const int modules = dictionary->markerSize + 2;
  cv::Mat picture;
  cv::aruco::drawMarker(dictionary, id, modules, picture);
  const double module_m = side_m / modules;
  for (int row = 0; row < modules; ++row) {
    for (int column = 0; column < modules; ++column) {
      if (picture.at<uchar>(row, column) > 127) continue;
      int end = column;
      while (end + 1 < modules && picture.at<uchar>(row, end + 1) <= 127)
        ++end;
      dark.push_back({x_m + column * module_m, y_m + row * module_m, (end - column + 1) * module_m, module_m});
      column = end;
    }
  }
}

}  // namespace

PrintedSize printedSize(const Board& board) {
  return {(board.columns + 1) * board.square_m, (board.rows + 1) * board.square_m};
}

Result<std::vector<PrintedRectangle>> printedBoard(const Board& board) {
  if (const auto checked = checkBoard(board); !checked) return tl::make_unexpected(checked.error());
  cv::Ptr<cv::aruco::Dictionary> dictionary;
  if (board.kind == Board::Kind::Charuco) {
    dictionary = cv::aruco::getPredefinedDictionary(*markerDictionaryNamed(board.dictionary));
  }
  std::vector<PrintedRectangle> dark;
  const double rim_m = 0.5 * (board.square_m - board.marker_m);
  int id = 0;
  for (int row = 0; row <= board.rows; ++row) {
    for (int column = 0; column <= board.columns; ++column) {
      const double x_m = column * board.square_m;
      const double y_m = row * board.square_m;
      if ((row + column) % 2 == 0) {
        dark.push_back({x_m, y_m, board.square_m, board.square_m});
      } else if (dictionary) {
        addMarker(dark, dictionary, id++, board.marker_m, x_m + rim_m, y_m + rim_m);
      }
    }
  }
  return dark;
}

Result<std::vector<PrintedRectangle>> printedTag(std::string_view dictionary, int id, double side_m) {
  const auto number = markerDictionaryNamed(dictionary);
  if (!number) return failure(ErrorCode::BoardMalformed, std::string(dictionary), "dictionary");
  const auto markers = cv::aruco::getPredefinedDictionary(*number);
  if (id < 0 || id >= markers->bytesList.rows) {
    return failure(ErrorCode::BoardMalformed, std::string(dictionary), "markers");
  }
  std::vector<PrintedRectangle> dark;
  addMarker(dark, markers, id, side_m, 0.0, 0.0);
  return dark;
}

}  // namespace ferrule
