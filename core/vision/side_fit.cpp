// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/side_fit.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/vision/outliers.h"

namespace ferrule {

namespace {

/// The ends of a side are left out: there the blur of the corner shows.
constexpr double kEndsLeftOut_px = 2.5;
constexpr double kLeastSide_px = 16.0;
/// Half the length of a profile across the side, in modules, and at most.
constexpr double kReach = 0.75;
constexpr double kMostReach_px = 6.0;
constexpr double kProfileStep_px = 0.25;
/// Share of full brightness between the two levels of a side.
constexpr double kLeastContrast = 0.04;
constexpr double kOutlier_px = 0.15;  // never reject what is nearer than this
constexpr std::size_t kLeastPlaces = 6;

const std::array<double, 256>& linearLight() {
  static const std::array<double, 256> table = [] {
    std::array<double, 256> values{};
    for (std::size_t i = 0; i < values.size(); ++i) {
      const double v = static_cast<double>(i) / 255.0;
      values[i] = v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    }
    return values;
  }();
  return table;
}

/// Bilinear, in linear light. Nothing outside the picture.
std::optional<double> brightness(const cv::Mat& grey, ImagePoint point) {
  const int x = static_cast<int>(std::floor(point.x));
  const int y = static_cast<int>(std::floor(point.y));
  if (x < 0 || y < 0 || x + 1 >= grey.cols || y + 1 >= grey.rows) return std::nullopt;
  const auto& light = linearLight();
  const double fx = point.x - x;
  const double fy = point.y - y;
  const auto* upper = grey.ptr<unsigned char>(y) + x;
  const auto* lower = grey.ptr<unsigned char>(y + 1) + x;
  return (1.0 - fy) * ((1.0 - fx) * light[upper[0]] + fx * light[upper[1]]) +
         fy * ((1.0 - fx) * light[lower[0]] + fx * light[lower[1]]);
}

/// How far from `middle` along `outward` the brightness passes half-way from dark to light.
std::optional<double> crossing(const cv::Mat& grey, ImagePoint middle, ImageVector outward, double reach_px) {
  const int steps = static_cast<int>(std::ceil(reach_px / kProfileStep_px));
  std::vector<double> profile;
  for (int i = -steps; i <= steps; ++i) {
    const auto value = brightness(grey, middle + (i * kProfileStep_px) * outward);
    if (!value) return std::nullopt;
    profile.push_back(*value);
  }
  // Levels from the outer thirds: the darkest place inside, the lightest outside.
  const auto third = static_cast<std::ptrdiff_t>(profile.size() / 3);
  const double dark = *std::min_element(profile.begin(), profile.begin() + third + 1);
  const double light = *std::max_element(profile.end() - third - 1, profile.end());
  if (light - dark < kLeastContrast) return std::nullopt;
  const double half = 0.5 * (dark + light);
  // The rising passage nearest to the guess.
  std::optional<double> best;
  for (std::size_t i = 0; i + 1 < profile.size(); ++i) {
    if (!(profile[i] < half && profile[i + 1] >= half)) continue;
    const double share = (half - profile[i]) / (profile[i + 1] - profile[i]);
    const double place = (static_cast<double>(i) + share - steps) * kProfileStep_px;
    if (!best || std::abs(place) < std::abs(*best)) best = place;
  }
  return best;
}

struct Line {
  ImagePoint point;
  ImageVector direction;  // unit
};

/// Places (along, across) of one side; the line is across = offset + slope * along, fitted twice with outliers out.
struct Place {
  double along = 0.0;
  double across = 0.0;
};

bool fitLine(const std::vector<Place>& places, double& offset, double& slope) {
  double n = 0.0, a = 0.0, c = 0.0;
  for (const Place& p : places) {
    n += 1.0;
    a += p.along;
    c += p.across;
  }
  if (places.size() < kLeastPlaces) return false;
  a /= n;
  c /= n;
  double aa = 0.0, ac = 0.0;
  for (const Place& p : places) {
    aa += (p.along - a) * (p.along - a);
    ac += (p.along - a) * (p.across - c);
  }
  if (!(aa > 0.0)) return false;
  slope = ac / aa;
  offset = c - slope * a;
  return true;
}

std::optional<Line> fitSide(const cv::Mat& grey, ImagePoint from, ImagePoint to, ImageVector outward, double reach_px) {
  const double side_px = distance(from, to);
  if (side_px < kLeastSide_px) return std::nullopt;
  const ImageVector along = unit(to - from);
  std::vector<Place> places;
  const int count = static_cast<int>(side_px - 2.0 * kEndsLeftOut_px);
  for (int i = 0; i <= count; ++i) {
    const double s = kEndsLeftOut_px + (side_px - 2.0 * kEndsLeftOut_px) * i / count;
    if (const auto across = crossing(grey, from + s * along, outward, reach_px)) places.push_back({s, *across});
  }
  if (2 * places.size() < static_cast<std::size_t>(count)) return std::nullopt;
  double offset = 0.0;
  double slope = 0.0;
  for (int round = 0; round < 3; ++round) {
    if (!fitLine(places, offset, slope)) return std::nullopt;
    std::vector<double> misses;
    for (const Place& p : places)
      misses.push_back(std::abs(p.across - offset - slope * p.along));
    places = withoutOutliers(places, misses, kOutlier_px);
  }
  if (!fitLine(places, offset, slope)) return std::nullopt;
  return Line{from + offset * outward, unit(along + slope * outward)};
}

std::optional<ImagePoint> meet(const Line& a, const Line& b) {
  const double determinant = cross(a.direction, b.direction);
  if (std::abs(determinant) < 0.2) return std::nullopt;
  return a.point + (cross(b.point - a.point, b.direction) / determinant) * a.direction;
}

}  // namespace

std::optional<std::array<ImagePoint, 4>> cornersFromSides(const cv::Mat& grey, const std::array<ImagePoint, 4>& corners,
                                                          double module_px) {
  const double reach_px = std::min(kReach * module_px, kMostReach_px);
  const ImagePoint centre{0.25 * (corners[0].x + corners[1].x + corners[2].x + corners[3].x),
                          0.25 * (corners[0].y + corners[1].y + corners[2].y + corners[3].y)};
  std::array<Line, 4> sides;
  for (std::size_t i = 0; i < 4; ++i) {
    const ImagePoint from = corners[i];
    const ImagePoint to = corners[(i + 1) % 4];
    ImageVector outward = perpendicular(unit(to - from));
    if (dot(outward, centre - from) > 0.0) outward = -outward;
    const auto side = fitSide(grey, from, to, outward, reach_px);
    if (!side) return std::nullopt;
    sides[i] = *side;
  }
  std::array<ImagePoint, 4> result;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto corner = meet(sides[(i + 3) % 4], sides[i]);
    // The guess was a corner already; a fit that leaves it has found something else.
    if (!corner || distance(*corner, corners[i]) > std::max(1.5, 0.5 * module_px)) return std::nullopt;
    result[i] = *corner;
  }
  return result;
}

}  // namespace ferrule
