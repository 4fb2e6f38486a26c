// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/coverage_picture.h"

#include <cmath>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/base/text_file.h"

namespace ferrule {

namespace {

constexpr double kWidth_px = 960.0;

}  // namespace

Result<void> writeCoveragePicture(const std::string& path, const LensCalibration& calibration) {
  const ImageSize size = calibration.lens.size;
  const double scale = kWidth_px / size.width;
  const int height = static_cast<int>(std::lround(size.height * scale));
  cv::Mat picture(height, static_cast<int>(kWidth_px), CV_8UC3, cv::Scalar(255, 255, 255));
  for (int row = 0; row < Coverage::kRows; ++row) {
    for (int column = 0; column < Coverage::kColumns; ++column) {
      const cv::Point from(picture.cols * column / Coverage::kColumns, picture.rows * row / Coverage::kRows);
      const cv::Point to(picture.cols * (column + 1) / Coverage::kColumns, picture.rows * (row + 1) / Coverage::kRows);
      const cv::Rect cell(from, to);
      if (calibration.coverage.corners[static_cast<std::size_t>(row * Coverage::kColumns + column)] == 0) {
        for (int x = cell.x - cell.height; x < cell.x + cell.width; x += 12) {
          cv::Point a(x, cell.y + cell.height);
          cv::Point b(x + cell.height, cell.y);
          if (cv::clipLine(cell, a, b)) cv::line(picture, a, b, cv::Scalar(190, 190, 190), 1, cv::LINE_AA);
        }
      }
      cv::rectangle(picture, cell, cv::Scalar(210, 210, 210), 1);
    }
  }
  for (const BoardView& view : calibration.usedViews) {
    for (const BoardCorner& corner : view.corners) {
      const cv::Point centre(static_cast<int>(std::lround(corner.pixel.x * scale)),
                             static_cast<int>(std::lround(corner.pixel.y * scale)));
      cv::circle(picture, centre, 3, cv::Scalar(160, 90, 20), cv::FILLED, cv::LINE_AA);
    }
  }
  std::vector<unsigned char> bytes;
  cv::imencode(".png", picture, bytes);
  return writeTextFile(path, {reinterpret_cast<const char*>(bytes.data()), bytes.size()});
}

}  // namespace ferrule
