// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/ring_cuts.h"

#include <algorithm>
#include <cmath>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr double kUsualElevation_rad = 0.09;
/// Shafts are 9 to 14 mm thick near the tip, and show a pixel's blur wider. Common practice, no source.
constexpr double kThinnest_m = 0.006;
constexpr double kThickest_m = 0.021;
/// Grey levels off the cloth's own line from black to bright; cloth and its chalk stay below.
constexpr double kOffCloth = 16.0;
/// The nose's shadow and the cushion are no cloth.
constexpr double kFromNose_m = 0.006;
constexpr std::size_t kFewestColours = 200;

/// Bilinear; nothing off the picture.
std::optional<Eigen::Vector3d> colourAt(const cv::Mat& picture, ImagePoint point) {
  const int x = static_cast<int>(std::floor(point.x));
  const int y = static_cast<int>(std::floor(point.y));
  if (x < 0 || y < 0 || x + 1 >= picture.cols || y + 1 >= picture.rows) return std::nullopt;
  const double fx = point.x - x;
  const double fy = point.y - y;
  const auto* upper = picture.ptr<unsigned char>(y) + 3 * x;
  const auto* lower = picture.ptr<unsigned char>(y + 1) + 3 * x;
  Eigen::Vector3d colour;
  for (int i = 0; i < 3; ++i) {
    colour[i] =
        (1.0 - fy) * ((1.0 - fx) * upper[i] + fx * upper[i + 3]) + fy * ((1.0 - fx) * lower[i] + fx * lower[i + 3]);
  }
  return colour;
}

struct Cell {
  ImagePoint pixel;
  Eigen::Vector3d colour;
};

std::optional<Cell> cellAt(const Rig& rig, const Table& table, const cv::Mat& picture, const Rings& rings,
                           double distance_m, double angle_rad) {
  const TablePoint3 place{rings.ball.x + distance_m * std::cos(angle_rad),
                          rings.ball.y + distance_m * std::sin(angle_rad),
                          shaftHeight(rings.radius_m, distance_m, kUsualElevation_rad)};
  if (std::abs(place.x) > 0.5 * table.length_m - kFromNose_m) return std::nullopt;
  if (std::abs(place.y) > 0.5 * table.width_m - kFromNose_m) return std::nullopt;
  const auto pixel = imageFromTable(rig, place);
  if (!pixel) return std::nullopt;
  const auto colour = colourAt(picture, *pixel);
  if (!colour) return std::nullopt;
  return Cell{*pixel, *colour};
}

/// Off the line from black through the cloth's colour: shadows and brighter light stay on it.
double offCloth(const Eigen::Vector3d& colour, const Eigen::Vector3d& towardsCloth) {
  return (colour - colour.dot(towardsCloth) * towardsCloth).norm();
}

/// One ring's differences; nothing where there is no cloth to compare with.
struct Ring {
  double distance_m = 0.0;
  std::vector<std::optional<double>> off;
};

/// Where between two places the difference passes a level.
double passing(double from, double to, double level) {
  return std::abs(to - from) > 1e-9 ? std::clamp((level - from) / (to - from), 0.0, 1.0) : 0.5;
}

std::optional<RingCut> cutOf(const Ring& ring, const Rings& rings, std::size_t first, std::size_t last) {
  // Something that goes on beyond what is seen has no width.
  if (first == 0 || last + 1 >= ring.off.size() || !ring.off[first - 1] || !ring.off[last + 1]) return std::nullopt;
  double inside = 0.0;
  for (std::size_t i = first; i <= last; ++i)
    inside = std::max(inside, *ring.off[i]);
  const double level = 0.5 * inside;
  std::size_t left = first;
  while (left > 0 && ring.off[left - 1] && *ring.off[left] >= level)
    --left;
  std::size_t right = last;
  while (right + 1 < ring.off.size() && ring.off[right + 1] && *ring.off[right] >= level)
    ++right;
  // A faint rim may fall below the level before the run ends.
  while (left + 1 < right && *ring.off[left + 1] < level)
    ++left;
  while (right > left + 1 && *ring.off[right - 1] < level)
    --right;
  const double from = static_cast<double>(left) + passing(*ring.off[left], *ring.off[left + 1], level);
  const double to = static_cast<double>(right) - passing(*ring.off[right], *ring.off[right - 1], level);
  RingCut cut;
  cut.distance_m = ring.distance_m;
  cut.angle_rad = rings.from_rad + 0.5 * (from + to) * rings.angleStep_rad;
  cut.width_m = (to - from) * rings.angleStep_rad * ring.distance_m;
  if (cut.width_m < kThinnest_m || cut.width_m > kThickest_m) return std::nullopt;
  return cut;
}

}  // namespace

double shaftHeight(double radius_m, double distance_m, double elevation_rad) {
  return radius_m + (distance_m - radius_m) * std::tan(elevation_rad);
}

std::optional<Eigen::Vector3d> clothAbout(const Rig& rig, const Table& table, const cv::Mat& picture,
                                          const Rings& rings) {
  std::array<std::vector<double>, 3> channels;
  for (double distance_m = rings.nearest_m; distance_m <= rings.farthest_m; distance_m += rings.step_m) {
    for (double angle_rad = rings.from_rad; angle_rad < rings.until_rad; angle_rad += rings.angleStep_rad) {
      const auto cell = cellAt(rig, table, picture, rings, distance_m, angle_rad);
      if (!cell) continue;
      for (std::size_t i = 0; i < 3; ++i)
        channels[i].push_back(cell->colour[static_cast<Eigen::Index>(i)]);
    }
  }
  if (channels[0].size() < kFewestColours) return std::nullopt;
  return Eigen::Vector3d(median(channels[0]), median(channels[1]), median(channels[2]));
}

std::vector<RingCut> ringCuts(const Rig& rig, const Table& table, const cv::Mat& picture, const Rings& rings,
                              const Eigen::Vector3d& cloth) {
  const Eigen::Vector3d towardsCloth = cloth.normalized();
  std::vector<RingCut> cuts;
  for (double distance_m = rings.nearest_m; distance_m <= rings.farthest_m; distance_m += rings.step_m) {
    Ring ring;
    ring.distance_m = distance_m;
    for (double angle_rad = rings.from_rad; angle_rad < rings.until_rad; angle_rad += rings.angleStep_rad) {
      const auto cell = cellAt(rig, table, picture, rings, distance_m, angle_rad);
      ring.off.push_back(cell ? std::optional(offCloth(cell->colour, towardsCloth)) : std::nullopt);
    }
    for (std::size_t i = 0; i < ring.off.size(); ++i) {
      const auto isOff = [&](std::size_t k) { return ring.off[k] && *ring.off[k] > kOffCloth; };
      if (!isOff(i)) continue;
      std::size_t last = i;
      while (last + 1 < ring.off.size() && isOff(last + 1))
        ++last;
      if (auto cut = cutOf(ring, rings, i, last)) {
        const auto pixel = imageFromTable(rig, {rings.ball.x + distance_m * std::cos(cut->angle_rad),
                                                rings.ball.y + distance_m * std::sin(cut->angle_rad),
                                                shaftHeight(rings.radius_m, distance_m, kUsualElevation_rad)});
        if (pixel) {
          cut->middle = *pixel;
          cuts.push_back(*cut);
        }
      }
      i = last;
    }
  }
  return cuts;
}

}  // namespace ferrule
