// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/error_map_picture.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <opencv2/imgcodecs.hpp>
#include <opencv2/imgproc.hpp>
#include <vector>

#include "core/base/text_file.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kTableWidth_px = 1080;
constexpr int kMargin_px = 72;
constexpr int kBudget_px = 210;
constexpr int kScaleWidth_px = 24;
constexpr int kScaleRoom_px = 110;
constexpr int kColumns = 9;
constexpr int kRows = 5;
/// The heat is worked out at places so far apart and smoothed between.
constexpr int kFine = 8;

const cv::Scalar kInk(40, 40, 40);

void write(cv::Mat& picture, const std::string& text, cv::Point at, double size = 0.5, const cv::Scalar& ink = kInk) {
  cv::putText(picture, text, at, cv::FONT_HERSHEY_SIMPLEX, size, ink, 1, cv::LINE_AA);
}

/// Dark on light ground and light on dark, so that the numbers stand on any colour.
void writeCentred(cv::Mat& picture, const std::string& text, cv::Point middle) {
  int below = 0;
  const cv::Size size = cv::getTextSize(text, cv::FONT_HERSHEY_SIMPLEX, 0.5, 1, &below);
  const cv::Point at(middle.x - size.width / 2, middle.y + size.height / 2);
  const auto ground = picture.at<cv::Vec3b>(middle);
  const double light = 0.114 * ground[0] + 0.587 * ground[1] + 0.299 * ground[2];
  write(picture, text, at, 0.5, light > 128.0 ? cv::Scalar(0, 0, 0) : cv::Scalar(255, 255, 255));
}

std::string number(double value, int decimals) {
  std::array<char, 32> text{};
  std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
  return text.data();
}

/// A round value at or above.
double roundedUp(double value) {
  const double power = std::pow(10.0, std::floor(std::log10(std::max(value, 1e-6))));
  for (const double step : {1.0, 2.0, 3.0, 5.0, 10.0}) {
    if (step * power >= value) return step * power;
  }
  return 10.0 * power;
}

struct Grid {
  cv::Mat reach_mm;  ///< CV_32F
  TablePoint worst;
  double most_mm = 0.0;
};

/// Where a ball's centre can be, row by row from the left (y up) side.
TablePoint placeOf(const ErrorMap& map, const Table& table, double right, double down) {
  return {(right - 0.5) * (table.length_m - 2.0 * map.radius_m()),
          (0.5 - down) * (table.width_m - 2.0 * map.radius_m())};
}

Grid gridOf(const ErrorMap& map, const Table& table) {
  const int columns = 4 * kFine;
  const int rows = 2 * kFine;
  Grid grid{cv::Mat(rows + 1, columns + 1, CV_32F, cv::Scalar(0.0F)), {}, 0.0};
  for (int row = 0; row <= rows; ++row) {
    for (int column = 0; column <= columns; ++column) {
      const TablePoint place =
          placeOf(map, table, static_cast<double>(column) / columns, static_cast<double>(row) / rows);
      const auto at = map.at(place);
      const double reach_mm = at ? millimetresFromMetres(at->reach95_m()) : 0.0;
      grid.reach_mm.at<float>(row, column) = static_cast<float>(reach_mm);
      if (reach_mm > grid.most_mm) {
        grid.most_mm = reach_mm;
        grid.worst = place;
      }
    }
  }
  return grid;
}

void drawBudget(cv::Mat& picture, const ErrorMap& map, TablePoint place, const std::string& title, cv::Point at) {
  const auto error = map.at(place);
  if (!error) return;
  write(picture,
        title + " (x " + number(millimetresFromMetres(place.x), 0) + ", y " +
            number(millimetresFromMetres(place.y), 0) + " mm)",
        at, 0.5);
  at.y += 24;
  for (const BudgetLine& line : error->budget) {
    write(picture, std::string(toText(line.component)), at);
    write(picture, number(millimetresFromMetres(line.u_m()), 2) + " mm", {at.x + 170, at.y});
    at.y += 20;
  }
  write(picture, "all together", at);
  write(picture,
        number(millimetresFromMetres(error->u_m()), 2) + " mm rms, 95 % within " +
            number(millimetresFromMetres(error->reach95_m()), 2) + " mm",
        {at.x + 170, at.y});
}

}  // namespace

cv::Mat errorMapPicture(const ErrorMap& map, const Table& table) {
  const int height = static_cast<int>(std::lround(kTableWidth_px * table.width_m / table.length_m));
  cv::Mat picture(2 * kMargin_px + height + kBudget_px, 2 * kMargin_px + kTableWidth_px + kScaleRoom_px, CV_8UC3,
                  cv::Scalar(255, 255, 255));
  const Grid grid = gridOf(map, table);
  const double top_mm = roundedUp(grid.most_mm);
  const cv::Rect bed(kMargin_px, kMargin_px, kTableWidth_px, height);
  cv::Mat fine, level, heat;
  cv::resize(grid.reach_mm, fine, bed.size(), 0, 0, cv::INTER_CUBIC);
  fine.convertTo(level, CV_8U, 255.0 / top_mm);
  cv::applyColorMap(level, heat, cv::COLORMAP_VIRIDIS);
  heat.copyTo(picture(bed));
  cv::rectangle(picture, bed, kInk, 2);
  for (const Pocket& pocket : pockets(table)) {
    const cv::Point centre(
        kMargin_px + static_cast<int>(std::lround(kTableWidth_px * (0.5 + pocket.mouth.x / table.length_m))),
        kMargin_px + static_cast<int>(std::lround(height * (0.5 - pocket.mouth.y / table.width_m))));
    cv::circle(picture, centre, static_cast<int>(0.5 * pocket.mouth_m * kTableWidth_px / table.length_m), kInk,
               cv::FILLED, cv::LINE_AA);
  }
  for (int row = 0; row < kRows; ++row) {
    for (int column = 0; column < kColumns; ++column) {
      const double right = (column + 0.5) / kColumns;
      const double down = (row + 0.5) / kRows;
      const auto at = map.at(placeOf(map, table, right, down));
      const cv::Point middle(bed.x + static_cast<int>(right * bed.width), bed.y + static_cast<int>(down * bed.height));
      writeCentred(picture, at ? number(millimetresFromMetres(at->reach95_m()), 2) : "-", middle);
    }
  }
  write(picture, "A ball lies within so many mm of where it is said to be (95 %). Head to the left.",
        {kMargin_px, kMargin_px - 48}, 0.6);
  const cv::Rect scale(bed.x + bed.width + 40, bed.y, kScaleWidth_px, bed.height);
  cv::Mat ramp(scale.height, 1, CV_8U);
  for (int row = 0; row < scale.height; ++row)
    ramp.at<uchar>(row) = static_cast<uchar>(255 - 255 * row / std::max(1, scale.height - 1));
  cv::Mat colours;
  cv::applyColorMap(ramp, colours, cv::COLORMAP_VIRIDIS);
  cv::resize(colours, colours, scale.size(), 0, 0, cv::INTER_NEAREST);
  colours.copyTo(picture(scale));
  cv::rectangle(picture, scale, kInk, 1);
  constexpr int kTicks = 4;
  for (int tick = 0; tick <= kTicks; ++tick) {
    const int y = scale.y + scale.height - scale.height * tick / kTicks;
    cv::line(picture, {scale.x + scale.width, y}, {scale.x + scale.width + 5, y}, kInk);
    write(picture, number(top_mm * tick / kTicks, 2) + " mm", {scale.x + scale.width + 9, y + 5}, 0.45);
  }
  const int below = bed.y + bed.height + 56;
  drawBudget(picture, map, {0.0, 0.0}, "At the middle", {kMargin_px, below});
  drawBudget(picture, map, grid.worst, "At the worst place", {kMargin_px + kTableWidth_px / 2, below});
  return picture;
}

Result<void> writeErrorMapPicture(const std::string& path, const ErrorMap& map, const Table& table) {
  std::vector<unsigned char> bytes;
  cv::imencode(".png", errorMapPicture(map, table), bytes);
  return writeTextFile(path, {reinterpret_cast<const char*>(bytes.data()), bytes.size()});
}

}  // namespace ferrule
