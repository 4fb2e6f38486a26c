// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/open_shot.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// Fullness of a safety: how far the cue ball's way passes the target's centre, in ball widths.
constexpr std::array kOffsets{-0.92, -0.75, -0.5, -0.25, 0.0, 0.25, 0.5, 0.75, 0.92};
constexpr std::array kSafetySpeeds_mps{0.6, 1.0, 1.6, 2.4};
constexpr std::array kSafetyHeights{-0.3, 0.0, 0.3};
constexpr std::array kKickSpeeds_mps{1.2, 2.0, 3.0};
constexpr std::array kKickFan_deg{-4.0, -2.4, -1.2, 0.0, 1.2, 2.4, 4.0};
constexpr double kMostKick_m = 4.0;
/// Break speeds for control and for power; strong breaks are 11 to 13 m/s. Source: Alciatore, typical speeds.
constexpr std::array kBreakSpeeds_mps{7.0, 9.5, 12.0};
/// Places of the cue ball behind the head string, in widths of the playing surface from the long string.
constexpr std::array kBreakPlaces{0.0, -0.16, 0.16, -0.3, 0.3};
constexpr double kBehindString_m = 0.03;

Strike strikeToward(const PlanningTable& table, const Situation& s, TablePoint cueBall, double direction_rad,
                    double speed_mps, double height) {
  Strike strike;
  strike.aim_rad = direction_rad;
  strike.speed_mps = speed_mps;
  strike.height = height;
  strike.elevation_rad = stanceOf(table.simulator.bed(), s.balls, cueBall, direction_rad).leastElevation_rad;
  return strike;
}

}  // namespace

std::vector<ReadyShot> safetyShots(const PlanningTable& table, const Situation& s) {
  const Layout layout = layoutOf(s.balls);
  const TablePoint cueBall = layout.at(kCueBall);
  const double width_m = 2.0 * table.radius_m();
  std::vector<ReadyShot> shots;
  BallMask targets = legalFirst(s);
  for (; !targets.empty(); targets = targets - BallMask::of(targets.lowest())) {
    const BallName ball = targets.lowest();
    const TablePoint target = layout.at(ball);
    const TableVector to = target - cueBall;
    const double away_m = std::max(length(to), width_m);
    const TableVector along = unit(to);
    const BallMask moving = BallMask::of(ball) | BallMask::of(kCueBall);
    for (const double offset : kOffsets) {
      const double beside_m = offset * width_m;
      const double before_m = std::sqrt(width_m * width_m - beside_m * beside_m);
      const TablePoint contact = target - before_m * along + beside_m * perpendicular(along);
      if (!isOpen(layout, cueBall, contact, moving, table.radius_m())) continue;
      const double direction_rad = direction(to) + std::asin(std::clamp(beside_m / away_m, -1.0, 1.0));
      for (const double speed_mps : kSafetySpeeds_mps) {
        for (const double height : kSafetyHeights) {
          const Plan plan{PlanKind::Safety,
                          ball,
                          std::nullopt,
                          ball,
                          0,
                          strikeToward(table, s, cueBall, direction_rad, speed_mps, height),
                          std::nullopt};
          shots.push_back({plan, s, std::max(0.0, away_m - before_m)});
        }
      }
    }
  }
  return shots;
}

std::vector<ReadyShot> kickShots(const PlanningTable& table, const Situation& s) {
  const Bed& bed = table.simulator.bed();
  const Layout layout = layoutOf(s.balls);
  const TablePoint cueBall = layout.at(kCueBall);
  const double x = bed.halfLength_m - bed.reach_m;
  const double y = bed.halfWidth_m - bed.reach_m;
  const auto mirror = [&](TablePoint p, int rail) {
    switch (rail) {
      case 0:
        return TablePoint{2.0 * x - p.x, p.y};
      case 1:
        return TablePoint{-2.0 * x - p.x, p.y};
      case 2:
        return TablePoint{p.x, 2.0 * y - p.y};
      default:
        return TablePoint{p.x, -2.0 * y - p.y};
    }
  };
  std::vector<ReadyShot> shots;
  BallMask targets = legalFirst(s);
  for (; !targets.empty(); targets = targets - BallMask::of(targets.lowest())) {
    const BallName ball = targets.lowest();
    const TablePoint target = layout.at(ball);
    const auto add = [&](TablePoint image, int cushions) {
      const double way_m = distance(cueBall, image);
      if (way_m > kMostKick_m) return;
      for (const double fan_deg : kKickFan_deg) {
        for (const double speed_mps : kKickSpeeds_mps) {
          const double direction_rad = direction(image - cueBall) + radiansFromDegrees(fan_deg);
          const Plan plan{PlanKind::Kick, ball,     std::nullopt,
                          ball,           cushions, strikeToward(table, s, cueBall, direction_rad, speed_mps, 0.0),
                          std::nullopt};
          shots.push_back({plan, s, way_m});
        }
      }
    };
    for (int one = 0; one < 4; ++one) {
      add(mirror(target, one), 1);
      for (int two = 0; two < 4; ++two) {
        if (two != one) add(mirror(mirror(target, two), one), 2);
      }
    }
  }
  return shots;
}

std::vector<ReadyShot> breakShots(const PlanningTable& table, const Situation& s) {
  const Bed& bed = table.simulator.bed();
  const BallMask present = ballsOnTable(s);
  std::vector<ReadyShot> shots;
  if (present.empty()) return shots;
  // The front ball is the one nearest to the head.
  const auto front = std::ranges::min_element(
      s.balls, {}, [](const BallAt& ball) { return ball.ball.isCueBall() ? 1e9 : ball.position.x; });
  const BallName ball = s.rules.first == FirstContactRule::Lowest ? present.lowest() : front->ball;
  const TablePoint target = ballIn(s.balls, ball)->position;
  std::vector<TablePoint> places;
  if (s.cueBall == CueBallFreedom::AsItLies && ballIn(s.balls, kCueBall) != nullptr) {
    places.push_back(ballIn(s.balls, kCueBall)->position);
  } else {
    for (const double across : kBreakPlaces)
      places.push_back({s.headString_m - kBehindString_m, across * 2.0 * bed.halfWidth_m});
  }
  for (const TablePoint place : places) {
    const Situation placed = withCueBallAt(s, place);
    for (const double speed_mps : kBreakSpeeds_mps) {
      Plan plan{PlanKind::Break,
                ball,
                std::nullopt,
                ball,
                0,
                strikeToward(table, placed, place, direction(target - place), speed_mps, 0.05),
                place};
      if (s.cueBall == CueBallFreedom::AsItLies) plan.cueBall = std::nullopt;
      shots.push_back({plan, placed, distance(place, target)});
    }
  }
  return shots;
}

}  // namespace ferrule
