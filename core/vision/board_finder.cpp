// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/board_finder.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <opencv2/aruco/charuco.hpp>
#include <opencv2/calib3d.hpp>
#include <opencv2/imgproc.hpp>

#include "core/vision/tag_finder.h"

namespace ferrule {

namespace {

/// Half the refinement window as a share of the distance to the next corner: large enough to average noise, small
/// enough to keep the neighbour's edges and the curvature of the lens out.
constexpr double kWindowPerSquare = 0.22;
/// On a ChArUco board the markers' own edges must stay outside: the white rim between square and marker is the limit.
constexpr double kWindowPerRim = 0.8;
constexpr int kLeastWindow_px = 2;
constexpr int kMostWindow_px = 12;
/// Chessboards are looked for in a picture no larger than this, then refined in the whole one.
constexpr double kSearchSide_px = 1280.0;
/// A marker layout explains a picture when its markers fit one plane this well, as a share of a square's side.
constexpr double kLayoutFit = 0.25;
constexpr std::size_t kMarkersForLayout = 3;

cv::TermCriteria refineUntil() {
  return {cv::TermCriteria::COUNT | cv::TermCriteria::EPS, 60, 0.001};
}

/// Refines every corner with a window that suits the squares around it.
void refine(const Board& board, const cv::Mat& grey, std::vector<BoardCorner>& corners) {
  const double rim = 0.5 * (board.square_m - board.marker_m) / board.square_m;
  const double share =
      board.kind == Board::Kind::Charuco ? std::min(kWindowPerSquare, kWindowPerRim * rim) : kWindowPerSquare;
  std::map<int, ImagePoint> places;
  for (const BoardCorner& corner : corners)
    places[corner.index] = corner.pixel;
  for (BoardCorner& corner : corners) {
    double nearest = INFINITY;
    for (const BoardCorner& other : corners) {
      if (other.index != corner.index) nearest = std::min(nearest, distance(places[other.index], places[corner.index]));
    }
    if (!std::isfinite(nearest)) continue;
    const int window = std::clamp(static_cast<int>(std::lround(share * nearest)), kLeastWindow_px, kMostWindow_px);
    std::vector<cv::Point2f> one{{static_cast<float>(corner.pixel.x), static_cast<float>(corner.pixel.y)}};
    cv::cornerSubPix(grey, one, {window, window}, {-1, -1}, refineUntil());
    corner.pixel = {one[0].x, one[0].y};
  }
  // A corner that ran to another's place, or out of the picture, is no corner.
  std::erase_if(corners, [&](const BoardCorner& corner) {
    return corner.pixel.x < 0 || corner.pixel.y < 0 || corner.pixel.x > grey.cols - 1 || corner.pixel.y > grey.rows - 1;
  });
}

BoardSight findChessboard(const Board& board, const cv::Mat& grey) {
  const double scale = std::min(1.0, kSearchSide_px / std::max(grey.cols, grey.rows));
  cv::Mat small = grey;
  if (scale < 1.0) cv::resize(grey, small, {}, scale, scale, cv::INTER_AREA);
  const cv::Size pattern(board.columns, board.rows);
  std::vector<cv::Point2f> found;
  bool seen =
      cv::findChessboardCorners(small, pattern, found, cv::CALIB_CB_ADAPTIVE_THRESH | cv::CALIB_CB_NORMALIZE_IMAGE);
  if (!seen) seen = cv::findChessboardCornersSB(small, pattern, found, cv::CALIB_CB_NORMALIZE_IMAGE);
  if (!seen) return {};
  BoardSight sight;
  sight.kind = BoardSight::Kind::Found;
  for (std::size_t i = 0; i < found.size(); ++i) {
    sight.corners.push_back(
        {static_cast<int>(i), {(found[i].x + 0.5) / scale - 0.5, (found[i].y + 0.5) / scale - 0.5}});
  }
  refine(board, grey, sight.corners);
  return sight;
}

struct Markers {
  std::vector<std::vector<cv::Point2f>> corners;
  std::vector<int> ids;
};

cv::Ptr<cv::aruco::CharucoBoard> charucoBoard(const Board& board) {
  return cv::aruco::CharucoBoard::create(board.columns + 1, board.rows + 1, static_cast<float>(board.square_m),
                                         static_cast<float>(board.marker_m),
                                         cv::aruco::getPredefinedDictionary(*markerDictionaryNamed(board.dictionary)));
}

Markers findMarkers(const Board& board, const cv::Mat& grey) {
  Markers markers;
  auto parameters = cv::aruco::DetectorParameters::create();
  parameters->cornerRefinementMethod = cv::aruco::CORNER_REFINE_NONE;
  cv::aruco::detectMarkers(grey, cv::aruco::getPredefinedDictionary(*markerDictionaryNamed(board.dictionary)),
                           markers.corners, markers.ids, parameters);
  const int count = (board.columns + 1) * (board.rows + 1) / 2;
  for (std::size_t i = markers.ids.size(); i-- > 0;) {
    const bool twice = std::ranges::count(markers.ids, markers.ids[i]) > 1;
    if (markers.ids[i] < count && !twice) continue;
    markers.ids.erase(markers.ids.begin() + static_cast<std::ptrdiff_t>(i));
    markers.corners.erase(markers.corners.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return markers;
}

/// Which squares carry markers, and in what order the ids run.
enum class Layout { Now, OldFromTop, OldFromBottom };

/// The square (column, row from the top) of marker id. Now: light squares of a board whose top-left square is dark.
cv::Point squareOfMarker(const Board& board, Layout layout, int id) {
  const int columns = board.columns + 1;
  const int rows = board.rows + 1;
  int next = 0;
  for (int i = 0; i < rows; ++i) {
    const int row = layout == Layout::OldFromBottom ? rows - 1 - i : i;
    for (int column = 0; column < columns; ++column) {
      const bool dark = (row % 2 == column % 2) == (layout == Layout::Now);
      if (dark) continue;
      if (next++ == id) return {column, row};
    }
  }
  return {-1, -1};
}

/// Whether the markers' centres lie where the layout says, on one plane in the picture.
bool explains(const Board& board, Layout layout, const Markers& markers) {
  std::vector<cv::Point2f> onBoard;
  std::vector<cv::Point2f> seen;
  double side_px = 0.0;
  for (std::size_t i = 0; i < markers.ids.size(); ++i) {
    const cv::Point square = squareOfMarker(board, layout, markers.ids[i]);
    const float half = static_cast<float>(0.5 * board.marker_m / board.square_m);
    const cv::Point2f centre(static_cast<float>(square.x) + 0.5F, static_cast<float>(square.y) + 0.5F);
    const cv::Point2f offsets[4] = {{-half, -half}, {half, -half}, {half, half}, {-half, half}};
    for (std::size_t k = 0; k < 4; ++k) {
      onBoard.push_back(centre + offsets[k]);
      seen.push_back(markers.corners[i][k]);
    }
    side_px += cv::norm(markers.corners[i][1] - markers.corners[i][0]) * board.square_m / board.marker_m;
  }
  side_px /= static_cast<double>(markers.ids.size());
  const cv::Mat image_from_board = cv::findHomography(onBoard, seen, 0);
  if (image_from_board.empty()) return false;
  std::vector<cv::Point2f> predicted;
  cv::perspectiveTransform(onBoard, predicted, image_from_board);
  std::vector<double> misses;
  for (std::size_t i = 0; i < seen.size(); ++i)
    misses.push_back(cv::norm(seen[i] - predicted[i]));
  std::ranges::nth_element(misses, misses.begin() + static_cast<std::ptrdiff_t>(misses.size() / 2));
  return misses[misses.size() / 2] < kLayoutFit * side_px;
}

BoardSight findCharuco(const Board& board, const cv::Mat& grey) {
  const Markers markers = findMarkers(board, grey);
  if (markers.ids.empty()) {
    cv::Mat flipped;
    cv::flip(grey, flipped, 1);
    if (findMarkers(board, flipped).ids.size() >= kMarkersForLayout) return {BoardSight::Kind::Mirrored, {}};
    return {};
  }
  if (markers.ids.size() >= kMarkersForLayout && !explains(board, Layout::Now, markers)) {
    const bool old = explains(board, Layout::OldFromTop, markers) || explains(board, Layout::OldFromBottom, markers);
    if (old && (board.rows + 1) % 2 == 0) return {BoardSight::Kind::LayoutOld, {}};
    return {};
  }
  std::vector<cv::Point2f> found;
  std::vector<int> ids;
  cv::aruco::interpolateCornersCharuco(markers.corners, markers.ids, grey, charucoBoard(board), found, ids);
  BoardSight sight;
  for (std::size_t i = 0; i < ids.size(); ++i)
    sight.corners.push_back({ids[i], {found[i].x, found[i].y}});
  if (sight.corners.empty()) return {};
  sight.kind = BoardSight::Kind::Found;
  // The library's corners come back half a pixel off to the right and below; this second refinement undoes it.
  refine(board, grey, sight.corners);
  return sight;
}

}  // namespace

BoardSight findBoard(const Board& board, const cv::Mat& grey) {
  try {
    return board.kind == Board::Kind::Charuco ? findCharuco(board, grey) : findChessboard(board, grey);
  } catch (const cv::Exception&) {
    return {};  // a picture too small for the library's windows
  }
}

Result<void> checkBoard(const Board& board) {
  if (board.kind == Board::Kind::Chessboard) return {};
  const auto number = markerDictionaryNamed(board.dictionary);
  if (!number) return failure(ErrorCode::BoardMalformed, board.text, "dictionary");
  const int markers = (board.columns + 1) * (board.rows + 1) / 2;
  if (cv::aruco::getPredefinedDictionary(*number)->bytesList.rows < markers) {
    return failure(ErrorCode::BoardMalformed, board.text, "markers");
  }
  return {};
}

}  // namespace ferrule
