// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/projection_picture.h"

#include <cmath>
#include <numbers>
#include <opencv2/aruco.hpp>
#include <opencv2/imgproc.hpp>

#include "core/base/contract.h"
#include "core/vision/tag_finder.h"

namespace ferrule {

namespace {

constexpr double kStep_m = 0.01;  ///< lines are bent in pieces of this length
constexpr int kRingPieces = 72;
constexpr int kDash = 3;  ///< pieces drawn, then as many left dark
constexpr int kThickness_px = 2;
constexpr int kFraction = 4;  ///< binary digits of a pixel in drawing
constexpr double kLabelScale = 0.7;
const cv::Scalar kLight(255, 255, 255);

constexpr int kColumns = 6;
constexpr int kRows = 4;
constexpr int kFirstId = 100;
constexpr const char* kGridDictionary = "DICT_4X4_250";

cv::Point fine(ImagePoint pixel) {
  const double scale = 1 << kFraction;
  return {static_cast<int>(std::lround(pixel.x * scale)), static_cast<int>(std::lround(pixel.y * scale))};
}

void drawPiece(cv::Mat& picture, const Projector& projector, TablePoint from, TablePoint to) {
  const auto a = projectorFromTable(projector, from);
  const auto b = projectorFromTable(projector, to);
  if (a && b) cv::line(picture, fine(*a), fine(*b), kLight, kThickness_px, cv::LINE_AA, kFraction);
}

void drawLine(cv::Mat& picture, const Projector& projector, const LightLine& line) {
  int piece = 0;
  const std::size_t count = line.places.size();
  for (std::size_t i = 0; i + 1 < count + (line.closed ? 1 : 0); ++i) {
    const TablePoint from = line.places[i];
    const TablePoint to = line.places[(i + 1) % count];
    const int pieces = std::max(1, static_cast<int>(std::ceil(distance(from, to) / kStep_m)));
    for (int k = 0; k < pieces; ++k, ++piece) {
      if (line.dashed && (piece / kDash) % 2 == 1) continue;
      const double begin = static_cast<double>(k) / pieces;
      const double end = static_cast<double>(k + 1) / pieces;
      drawPiece(picture, projector, from + begin * (to - from), from + end * (to - from));
    }
  }
}

}  // namespace

LightLine ringAround(TablePoint place, double radius_m) {
  LightLine ring;
  ring.closed = true;
  for (int i = 0; i < kRingPieces; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / kRingPieces;
    ring.places.push_back(place + TableVector{radius_m * std::cos(angle), radius_m * std::sin(angle)});
  }
  return ring;
}

cv::Mat projectionPicture(const Projector& projector, const LightDrawing& drawing) {
  cv::Mat picture(projector.size.height, projector.size.width, CV_8UC3, cv::Scalar::all(0));
  for (const LightLine& line : drawing.lines)
    drawLine(picture, projector, line);
  for (const LightLabel& label : drawing.labels) {
    const auto at = projectorFromTable(projector, label.place);
    if (!at) continue;
    cv::putText(picture, label.text, {static_cast<int>(std::lround(at->x)), static_cast<int>(std::lround(at->y))},
                cv::FONT_HERSHEY_SIMPLEX, kLabelScale, kLight, kThickness_px, cv::LINE_AA);
  }
  return picture;
}

ProjectorGrid projectorGridFor(ImageSize size) {
  FERRULE_REQUIRE(size.width >= 320 && size.height >= 200);
  ProjectorGrid grid{size, kGridDictionary, {}};
  const double cellWidth = static_cast<double>(size.width) / kColumns;
  const double cellHeight = static_cast<double>(size.height) / kRows;
  // Whole modules of whole pixels: four bits and a border on each side, and a quiet module around.
  const int module = static_cast<int>(std::min(cellWidth, cellHeight) / 9.0);
  const int side = 6 * module;
  for (int row = 0; row < kRows; ++row) {
    for (int column = 0; column < kColumns; ++column) {
      const double left = std::floor((column + 0.5) * cellWidth - side / 2.0);
      const double top = std::floor((row + 0.5) * cellHeight - side / 2.0);
      // The black square's corners lie between pixels.
      const double l = left - 0.5;
      const double t = top - 0.5;
      grid.tags.push_back(
          {kFirstId + row * kColumns + column, {ImagePoint{l, t}, {l + side, t}, {l + side, t + side}, {l, t + side}}});
    }
  }
  return grid;
}

cv::Mat gridPicture(const ProjectorGrid& grid) {
  cv::Mat picture(grid.size.height, grid.size.width, CV_8UC3, cv::Scalar::all(255));
  const auto number = markerDictionaryNamed(grid.dictionary);
  FERRULE_REQUIRE(number.has_value());
  const auto dictionary = cv::aruco::getPredefinedDictionary(*number);
  for (const TagObservation& tag : grid.tags) {
    const int side = static_cast<int>(std::lround(tag.corners[1].x - tag.corners[0].x));
    cv::Mat marker;
    cv::aruco::drawMarker(dictionary, tag.id, side, marker, 1);
    cv::cvtColor(marker, marker, cv::COLOR_GRAY2BGR);
    const cv::Rect area(static_cast<int>(std::lround(tag.corners[0].x + 0.5)),
                        static_cast<int>(std::lround(tag.corners[0].y + 0.5)), side, side);
    marker.copyTo(picture(area));
  }
  return picture;
}

}  // namespace ferrule
