// SPDX-License-Identifier: GPL-3.0-or-later
#include <opencv2/imgcodecs.hpp>

#include "core/base/text_file.h"
#include "core/vision/board_finder.h"

namespace ferrule {

namespace {

Result<cv::Mat> readStill(const std::string& path) {
  const auto bytes = readTextFile(path);
  if (!bytes) return tl::make_unexpected(bytes.error());
  cv::Mat grey;
  try {
    const cv::Mat encoded(1, static_cast<int>(bytes->size()), CV_8U, const_cast<char*>(bytes->data()));
    grey = cv::imdecode(encoded, cv::IMREAD_GRAYSCALE | cv::IMREAD_IGNORE_ORIENTATION);
  } catch (const cv::Exception&) {
  }
  if (grey.empty()) return failure(ErrorCode::NotAnImage, path);
  return grey;
}

}  // namespace

Result<std::vector<BoardView>> viewsOfBoard(const Board& board, std::span<const std::string> stills,
                                            const JobControl& job) {
  if (const auto checked = checkBoard(board); !checked) return tl::make_unexpected(checked.error());
  std::vector<BoardView> views;
  std::string mirrored;
  bool old = false;
  ImageSize size;
  for (std::size_t i = 0; i < stills.size(); ++i) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    job.reportShare(static_cast<double>(i) / static_cast<double>(stills.size()), "looking for the board");
    const auto grey = readStill(stills[i]);
    if (!grey) return tl::make_unexpected(grey.error());
    const ImageSize own{grey->cols, grey->rows};
    if (i == 0) size = own;
    if (own != size) {
      return failure(ErrorCode::ImageSizesMixed, stills[i], {},
                     {static_cast<double>(own.width), static_cast<double>(own.height), static_cast<double>(size.width),
                      static_cast<double>(size.height)});
    }
    BoardSight sight = findBoard(board, *grey);
    switch (sight.kind) {
      case BoardSight::Kind::Found:
        views.push_back({stills[i], size, std::move(sight.corners)});
        break;
      case BoardSight::Kind::LayoutOld:
        old = true;
        break;
      case BoardSight::Kind::Mirrored:
        if (mirrored.empty()) mirrored = stills[i];
        break;
      case BoardSight::Kind::None:
        break;
    }
  }
  job.reportShare(1.0, "looking for the board");
  if (views.empty()) {
    if (old) return failure(ErrorCode::BoardLayoutOld, board.text);
    if (!mirrored.empty()) return failure(ErrorCode::ImageMirrored, mirrored);
    return failure(ErrorCode::BoardNotFound, board.text, {}, {static_cast<double>(stills.size())});
  }
  return views;
}

}  // namespace ferrule
