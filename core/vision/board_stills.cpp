// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/board_stills.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <opencv2/imgcodecs.hpp>

#include "core/base/text_file.h"
#include "core/vision/board_finder.h"
#include "core/vision/board_sharpness.h"

namespace ferrule {

namespace {

/// Corners of two pictures of a board that nobody touched lie as near as they are found; a picture that was saved again
/// as well. Common practice, no source.
constexpr double kSamePlace_px = 0.15;
constexpr double kShared = 0.8;
/// What shows fewer corners fixes no pose and tells nothing of the lens.
constexpr std::size_t kLeastCorners = 8;

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

/// Whether two stills show the board at the same place. Corners that only one of them shows do not matter while most
/// are shared.
bool showTheSame(const BoardStill& a, const BoardStill& b) {
  std::map<int, ImagePoint> places;
  for (const BoardCorner& corner : a.corners)
    places[corner.index] = corner.pixel;
  double squares = 0.0;
  std::size_t shared = 0;
  for (const BoardCorner& corner : b.corners) {
    const auto other = places.find(corner.index);
    if (other == places.end()) continue;
    squares += std::pow(distance(other->second, corner.pixel), 2);
    ++shared;
  }
  const double most = static_cast<double>(std::max(a.corners.size(), b.corners.size()));
  return shared > 0 && static_cast<double>(shared) >= kShared * most &&
         std::sqrt(squares / static_cast<double>(shared)) < kSamePlace_px;
}

StillFate fateOf(BoardSight::Kind kind) {
  switch (kind) {
    case BoardSight::Kind::LayoutOld:
      return StillFate::LayoutOld;
    case BoardSight::Kind::Mirrored:
      return StillFate::Mirrored;
    case BoardSight::Kind::Found:
      return StillFate::Used;
    case BoardSight::Kind::None:
      break;
  }
  return StillFate::NoBoard;
}

BoardStill lookAt(const Board& board, const std::string& path, std::optional<ImageSize>& size) {
  BoardStill still;
  still.path = path;
  const auto grey = readStill(path);
  if (!grey) {
    still.fate = StillFate::Unreadable;
    still.error = grey.error();
    return still;
  }
  still.size = {grey->cols, grey->rows};
  if (!size) size = still.size;
  if (still.size != *size) {
    still.fate = StillFate::OtherSize;
    still.error = Error{ErrorCode::ImageSizesMixed,
                        path,
                        {},
                        {static_cast<double>(still.size.width), static_cast<double>(still.size.height),
                         static_cast<double>(size->width), static_cast<double>(size->height)}};
    return still;
  }
  return lookAtStill(board, *grey, path);
}

}  // namespace

BoardStill lookAtStill(const Board& board, const cv::Mat& grey, const std::string& path) {
  BoardStill still;
  still.path = path;
  still.size = {grey.cols, grey.rows};
  BoardSight sight = findBoard(board, grey);
  still.fate = fateOf(sight.kind);
  if (sight.kind != BoardSight::Kind::Found) return still;
  if (sight.corners.size() < kLeastCorners) {
    still.fate = StillFate::NoBoard;
    return still;
  }
  still.corners = std::move(sight.corners);
  if (const auto sharpness = boardSharpness(board, grey, still.corners)) {
    still.edge_px = sharpness->edge_px;
    if (sharpness->isBlurred()) still.fate = StillFate::Blurred;
  }
  return still;
}

const BoardStill* sameStillAs(const BoardStill& still, std::span<const BoardStill> known) {
  const auto same = std::ranges::find_if(
      known, [&](const BoardStill& other) { return other.fate == StillFate::Used && showTheSame(other, still); });
  return same == known.end() ? nullptr : &*same;
}

Result<std::vector<BoardStill>> surveyStills(const Board& board, std::span<const std::string> stills,
                                             std::span<const BoardStill> known, const JobControl& job) {
  if (const auto checked = checkBoard(board); !checked) return tl::make_unexpected(checked.error());
  std::vector<BoardStill> all;
  std::optional<ImageSize> size;
  for (const BoardStill& still : known) {
    if (still.fate != StillFate::Unreadable && still.fate != StillFate::OtherSize && !size) size = still.size;
  }
  for (const std::string& path : stills) {
    if (job.stop.stop_requested()) return failure(ErrorCode::Cancelled);
    job.reportShare(static_cast<double>(all.size()) / static_cast<double>(stills.size()), "looking for the board");
    BoardStill still = lookAt(board, path, size);
    if (still.fate == StillFate::Used) {
      const BoardStill* first = sameStillAs(still, known);
      if (first == nullptr) first = sameStillAs(still, all);
      if (first != nullptr) {
        still.fate = StillFate::Repeated;
        still.sameAs = first->path;
      }
    }
    all.push_back(std::move(still));
  }
  job.reportShare(1.0, "looking for the board");
  return all;
}

std::vector<BoardView> usableViews(std::span<const BoardStill> stills) {
  std::vector<BoardView> views;
  for (const BoardStill& still : stills) {
    if (still.fate == StillFate::Used) views.push_back({still.path, still.size, still.corners});
  }
  return views;
}

Result<std::vector<BoardView>> viewsOfBoard(const Board& board, std::span<const BoardStill> stills) {
  for (const BoardStill& still : stills) {
    if (still.error) return tl::make_unexpected(*still.error);
  }
  auto views = usableViews(stills);
  if (!views.empty()) return views;
  const auto firstOf = [&](StillFate fate) { return std::ranges::find(stills, fate, &BoardStill::fate); };
  if (firstOf(StillFate::LayoutOld) != stills.end()) return failure(ErrorCode::BoardLayoutOld, board.text);
  if (const auto mirrored = firstOf(StillFate::Mirrored); mirrored != stills.end()) {
    return failure(ErrorCode::ImageMirrored, mirrored->path);
  }
  if (const auto blurred = firstOf(StillFate::Blurred); blurred != stills.end()) {
    return failure(ErrorCode::BoardNotFound, board.text, "blurred", {static_cast<double>(stills.size())});
  }
  return failure(ErrorCode::BoardNotFound, board.text, {}, {static_cast<double>(stills.size())});
}

}  // namespace ferrule
