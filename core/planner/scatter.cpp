// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/scatter.h"

#include <algorithm>
#include <cmath>

#include "core/base/word_list.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr WordList<3> kLevelWords{"beginner", "club", "expert"};

constexpr double kCueRadius_m = 0.006;
constexpr double kBridge_m = 0.2;
constexpr double kReach_m = 0.9;
constexpr double kRailBridge_m = 0.15;
constexpr double kMostElevation_rad = 1.2;

constexpr double kStretchedFactor = 1.3;
constexpr double kRailBridgeFactor = 1.15;
constexpr double kOverBallFactor = 1.6;
/// Per radian of elevation above what a level shot has.
constexpr double kElevationFactor = 1.5;
constexpr double kLongWay_m = 1.2;
constexpr double kLongFactor_pm = 0.15;
/// A tip this far inside the friction cone does not slip.
constexpr double kMiscueMargin = 1e-3;

/// How far behind the ball the cue's line leaves the playing surface.
double distanceToRail(const Bed& bed, TablePoint ball, TableVector back) {
  double nearest = 10.0;
  if (std::abs(back.x) > 1e-9) nearest = std::min(nearest, (std::copysign(bed.halfLength_m, back.x) - ball.x) / back.x);
  if (std::abs(back.y) > 1e-9) nearest = std::min(nearest, (std::copysign(bed.halfWidth_m, back.y) - ball.y) / back.y);
  return std::max(nearest, 0.0);
}

/// The elevation with which the cue's underside clears an obstacle this high at this distance behind the ball's centre.
double elevationOver(double height_m, double distance_m, double radius_m) {
  const double rise_m = height_m + kCueRadius_m - radius_m;
  return std::atan2(std::max(rise_m, 0.0), std::max(distance_m, radius_m));
}

}  // namespace

Scatter scatterOf(PlayerLevel level) {
  switch (level) {
    case PlayerLevel::Beginner:
      return {radiansFromDegrees(0.45), 0.12, 0.08, 0.10, radiansFromDegrees(1.0)};
    case PlayerLevel::Club:
      return {radiansFromDegrees(0.18), 0.06, 0.04, 0.05, radiansFromDegrees(0.5)};
    case PlayerLevel::Expert:
      break;
  }
  return {radiansFromDegrees(0.06), 0.03, 0.02, 0.025, radiansFromDegrees(0.2)};
}

std::string_view toText(PlayerLevel level) {
  return wordOf(kLevelWords, level);
}

std::optional<PlayerLevel> playerLevelFromText(std::string_view text) {
  return valueOf<PlayerLevel>(kLevelWords, text);
}

Stance stanceOf(const Bed& bed, std::span<const BallAt> balls, TablePoint cueBall, double aim_rad) {
  const TableVector back{-std::cos(aim_rad), -std::sin(aim_rad)};
  Stance stance;
  const double rail_m = distanceToRail(bed, cueBall, back);
  stance.stretched = rail_m > kReach_m;
  stance.railBridge = rail_m < kRailBridge_m;
  stance.leastElevation_rad = elevationOver(bed.noseHeight_m, rail_m, bed.radius_m);
  for (const BallAt& other : balls) {
    if (other.ball.isCueBall()) continue;
    const TableVector to = other.position - cueBall;
    const double along_m = dot(to, back);
    const double reach_m = bed.radius_m + kCueRadius_m;
    const double beside_m = std::abs(cross(back, to));
    if (along_m <= 0.0 || along_m > kBridge_m + bed.radius_m || beside_m >= reach_m) continue;
    stance.overBall = true;
    // The highest point of the obstacle's section along the cue.
    const double section_m = std::sqrt(std::max(0.0, bed.radius_m * bed.radius_m - beside_m * beside_m));
    stance.leastElevation_rad =
        std::max(stance.leastElevation_rad, elevationOver(bed.radius_m + section_m, along_m, bed.radius_m));
  }
  stance.leastElevation_rad = std::min(stance.leastElevation_rad, kMostElevation_rad);
  return stance;
}

Scatter scatterFor(const Scatter& base, const Stance& stance, double elevation_rad, double way_m) {
  double factor = 1.0;
  if (stance.stretched) factor *= kStretchedFactor;
  if (stance.railBridge) factor *= kRailBridgeFactor;
  if (stance.overBall) factor *= kOverBallFactor;
  factor *= 1.0 + kElevationFactor * elevation_rad;
  Scatter s = base;
  s.aim_rad *= factor * (1.0 + kLongFactor_pm * std::max(0.0, way_m - kLongWay_m));
  s.speed *= factor;
  s.side *= factor;
  s.height *= factor;
  return s;
}

Deviates drawDeviates(Random& random) {
  Deviates deviates{};
  for (double& value : deviates)
    value = random.normal();
  return deviates;
}

Strike delivered(const Strike& asked, const Scatter& scatter, const Deviates& deviates,
                 const PhysicsParameters& parameters) {
  // strikeDeparting takes the squirt off the direction it is given.
  const double meant_rad = asked.aim_rad - strikeDeparting(0.0, asked, parameters).aim_rad;
  Strike strike = asked;
  strike.speed_mps = std::clamp(asked.speed_mps * (1.0 + scatter.speed * deviates[1]), 0.05, 20.0);
  strike.side += scatter.side * deviates[2];
  strike.height += scatter.height * deviates[3];
  strike.elevation_rad = std::clamp(asked.elevation_rad + scatter.elevation_rad * deviates[4], 0.0, 1.45);
  const double offset = std::hypot(strike.side, strike.height);
  const double most = miscueLimit(parameters) - kMiscueMargin;
  if (offset > most) {
    strike.side *= most / offset;
    strike.height *= most / offset;
  }
  return strikeDeparting(meant_rad + scatter.aim_rad * deviates[0], strike, parameters);
}

}  // namespace ferrule
