// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cue/shaft_line.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>
#include <vector>

#include "core/cue/ring_cuts.h"
#include "core/geometry/units.h"
#include "core/vision/outliers.h"

namespace ferrule {

namespace {

constexpr double kFarthest_m = 0.32;
constexpr double kFromBall_m = 0.004;  ///< between the ball's face and the first ring
constexpr double kCoarseStep_m = 0.008;
constexpr double kCoarseAngle_rad = 0.0175;
constexpr double kFineStep_m = 0.003;
constexpr double kFineAngle_rad = 0.003;
/// To either side of the direction that the coarse look found.
constexpr double kFineReach_rad = 0.21;
/// The tip is no farther from the ball than in a backswing, and so much of the shaft must be seen.
constexpr double kTipWithin_m = 0.17;
constexpr double kLeastLength_m = 0.060;
/// A line of cuts may miss a ring now and then.
constexpr double kMostHole_m = 0.020;
constexpr double kCoarseOff_m = 0.004;
constexpr double kFineOff_m = 0.0015;
constexpr std::size_t kFewestCoarse = 6;
constexpr std::size_t kFewestFine = 16;
/// Of the ball's radius: beyond it the tip would miscue, with room for the coarse look. Common practice, no source.
constexpr double kMostSide = 0.7;
/// What nobody sees: how far the butt is raised, and how high the tip meets the ball.
constexpr double kUsualElevation_rad = 0.09;
constexpr double kElevation_u_rad = 0.06;
constexpr double kTipHeight_u = 0.35;  ///< of the ball's radius
/// Blur and light from one side pull both edges of a shaft, px. From memory.
constexpr double kEdges_u_px = 0.15;
constexpr double kLeastOff_m = 0.0004;

/// A straight line through places of the table: heading towards the ball, and how far it passes to the left of it.
struct Fit {
  double heading_rad = 0.0;
  double left_m = 0.0;
  double scatter_m = 0.0;
  double heading_u_rad = 0.0;
  double left_u_m = 0.0;
};

std::optional<Fit> lineThrough(std::span<const TablePoint> places, TablePoint ball) {
  if (places.size() < 3) return std::nullopt;
  const auto n = static_cast<double>(places.size());
  double x = 0.0, y = 0.0;
  for (const TablePoint& place : places) {
    x += place.x / n;
    y += place.y / n;
  }
  double xx = 0.0, xy = 0.0, yy = 0.0;
  for (const TablePoint& place : places) {
    xx += (place.x - x) * (place.x - x);
    xy += (place.x - x) * (place.y - y);
    yy += (place.y - y) * (place.y - y);
  }
  Fit fit;
  fit.heading_rad = 0.5 * std::atan2(2.0 * xy, xx - yy);
  TableVector along{std::cos(fit.heading_rad), std::sin(fit.heading_rad)};
  if (along.x * (ball.x - x) + along.y * (ball.y - y) < 0.0) {
    fit.heading_rad = wrapAngle(fit.heading_rad + std::numbers::pi);
    along = -along;
  }
  const TableVector toBall{ball.x - x, ball.y - y};
  fit.left_m = -cross(along, toBall);
  double squares = 0.0, spread = 0.0;
  for (const TablePoint& place : places) {
    const double off = cross(along, TableVector{place.x - x, place.y - y});
    const double ahead = dot(along, TableVector{place.x - x, place.y - y});
    squares += off * off;
    spread += ahead * ahead;
  }
  // Neighbouring cuts share their pixels: about two of them make one look.
  const double variance = 2.0 * std::max(squares / (n - 2.0), kLeastOff_m * kLeastOff_m);
  fit.scatter_m = std::sqrt(squares / (n - 2.0));
  fit.heading_u_rad = std::sqrt(variance / spread);
  const double ahead = dot(along, toBall);
  fit.left_u_m = std::sqrt(variance * (1.0 / n + ahead * ahead / spread));
  return fit;
}

TablePoint placeOf(const RingCut& cut, TablePoint ball) {
  return {ball.x + cut.distance_m * std::cos(cut.angle_rad), ball.y + cut.distance_m * std::sin(cut.angle_rad)};
}

/// The longest unbroken run of cuts along the line through two of them.
std::vector<RingCut> runAlong(std::span<const RingCut> cuts, TablePoint ball, TablePoint from, TableVector along,
                              double off_m) {
  std::vector<RingCut> run;
  std::vector<RingCut> best;
  const auto keep = [&] {
    if (run.size() > best.size()) best = run;
    run.clear();
  };
  for (const RingCut& cut : cuts) {
    if (std::abs(cross(along, placeOf(cut, ball) - from)) > off_m) continue;
    if (!run.empty() && cut.distance_m - run.back().distance_m > kMostHole_m) keep();
    if (run.empty() || cut.distance_m > run.back().distance_m) run.push_back(cut);
  }
  keep();
  return best;
}

double lengthOf(const std::vector<RingCut>& run) {
  return run.empty() ? 0.0 : run.back().distance_m - run.front().distance_m;
}

/// Cuts of one bar that points at the ball and reaches near it; empty where there is none.
std::vector<RingCut> barOf(std::span<const RingCut> cuts, TablePoint ball, double radius_m, double off_m,
                           std::size_t fewest) {
  std::vector<RingCut> best;
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    for (std::size_t k = i + 1; k < cuts.size(); ++k) {
      const double apart_m = cuts[k].distance_m - cuts[i].distance_m;
      if (apart_m < 0.6 * kLeastLength_m || apart_m > 2.0 * kLeastLength_m) continue;
      const TablePoint from = placeOf(cuts[i], ball);
      const TableVector along = unit(placeOf(cuts[k], ball) - from);
      if (std::abs(cross(along, ball - from)) > kMostSide * radius_m) continue;
      auto run = runAlong(cuts, ball, from, along, off_m);
      if (run.size() < fewest || lengthOf(run) < kLeastLength_m) continue;
      if (run.front().distance_m > kTipWithin_m) continue;
      if (run.size() > best.size()) best = std::move(run);
    }
  }
  return best;
}

/// The same line with the shaft at another height.
std::optional<Fit> fitAt(const Rig& rig, std::span<const RingCut> bar, TablePoint ball, double radius_m,
                         double elevation_rad, double tipHeight_m) {
  std::vector<TablePoint> places;
  for (const RingCut& cut : bar) {
    const double height_m = shaftHeight(radius_m, cut.distance_m, elevation_rad) + tipHeight_m;
    if (const auto place = tableFromImage(rig, cut.middle, height_m)) places.push_back(*place);
  }
  return lineThrough(places, ball);
}

}  // namespace

std::optional<ShaftLine> shaftLine(const Rig& rig, const Table& table, const cv::Mat& picture, TablePoint ball,
                                   double radius_m) {
  Rings rings;
  rings.ball = ball;
  rings.radius_m = radius_m;
  rings.nearest_m = radius_m + kFromBall_m;
  rings.farthest_m = kFarthest_m;
  rings.step_m = kCoarseStep_m;
  rings.from_rad = 0.0;
  // A little more than once round, so that nothing is cut in two.
  rings.until_rad = 2.0 * std::numbers::pi + 0.7;
  rings.angleStep_rad = kCoarseAngle_rad;
  const auto cloth = clothAbout(rig, table, picture, rings);
  if (!cloth) return std::nullopt;
  const auto coarse = barOf(ringCuts(rig, table, picture, rings, *cloth), ball, radius_m, kCoarseOff_m, kFewestCoarse);
  if (coarse.empty()) return std::nullopt;

  const double middle_rad = coarse[coarse.size() / 2].angle_rad;
  rings.step_m = kFineStep_m;
  rings.angleStep_rad = kFineAngle_rad;
  rings.from_rad = middle_rad - kFineReach_rad;
  rings.until_rad = middle_rad + kFineReach_rad;
  const auto bar = barOf(ringCuts(rig, table, picture, rings, *cloth), ball, radius_m, kFineOff_m, kFewestFine);
  if (bar.empty()) return std::nullopt;
  const auto fit = fitAt(rig, bar, ball, radius_m, kUsualElevation_rad, 0.0);
  if (!fit || fit->scatter_m > kFineOff_m) return std::nullopt;

  const double perPixel_m = [&] {
    const auto a = tableFromImage(rig, bar.front().middle, radius_m);
    const auto b = tableFromImage(rig, bar.front().middle + ImageVector{1.0, 0.0}, radius_m);
    return a && b ? distance(*a, *b) : 0.0;
  }();
  const double edges_m = kEdges_u_px * perPixel_m;
  double aim = fit->heading_u_rad * fit->heading_u_rad;
  double side = fit->left_u_m * fit->left_u_m + edges_m * edges_m;
  // An edge that is pulled over half of the shaft only turns the line.
  const double turned_rad = 2.0 * edges_m / lengthOf(bar);
  aim += turned_rad * turned_rad;
  const auto other = {fitAt(rig, bar, ball, radius_m, kUsualElevation_rad + kElevation_u_rad, 0.0),
                      fitAt(rig, bar, ball, radius_m, kUsualElevation_rad, kTipHeight_u * radius_m)};
  for (const auto& changed : other) {
    if (!changed) return std::nullopt;
    const double turn_rad = wrapAngle(changed->heading_rad - fit->heading_rad);
    aim += turn_rad * turn_rad;
    side += (changed->left_m - fit->left_m) * (changed->left_m - fit->left_m);
  }
  ShaftLine line;
  line.aim_rad = {fit->heading_rad, std::sqrt(aim)};
  line.side_m = {-fit->left_m, std::sqrt(side)};
  line.noise_rad = fit->heading_u_rad;
  line.length_m = lengthOf(bar);
  return line;
}

}  // namespace ferrule
