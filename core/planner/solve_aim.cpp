// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/solve_aim.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr int kMostTrials = 9;
/// Where a first guess meets nothing it is turned by this.
constexpr std::array kLooks_deg{0.5, -0.5, 1.2, -1.2, 2.5, -2.5};
constexpr double kGood_rad = 2e-4;  ///< 0.01 degrees: a fiftieth of the narrowest pocket's window
constexpr double kLargestStep_rad = 0.06;
constexpr double kSmallestSlope = 0.5;
/// Just after a contact.
constexpr double kAfter_s = 1e-7;

bool meets(const ShotEvent& event, BallName a, BallName b) {
  return event.kind == EventKind::Ball && event.other &&
         ((event.ball == a && *event.other == b) || (event.ball == b && *event.other == a));
}

/// When the target begins its last leg, if everything before happened as meant.
std::optional<double> lastLeg_s(const ShotWay& way, const Simulation& played) {
  int cueCushions = 0;
  int targetCushions = 0;
  bool cueMet = false;
  bool targetHit = false;
  for (const ShotEvent& event : played.events) {
    if (event.kind == EventKind::Pocket || event.kind == EventKind::OffTable) return std::nullopt;
    if (event.kind == EventKind::Cushion) {
      if (event.ball.isCueBall()) {
        if (!cueMet) ++cueCushions;
      } else if (event.ball == way.target) {
        if (!targetHit) continue;
        ++targetCushions;
        if (way.kind == PlanKind::Bank && targetCushions == way.cushions) return event.time_s;
        if (way.kind != PlanKind::Bank) return std::nullopt;
      }
      continue;
    }
    if (!event.other) continue;
    const bool withCue = event.ball.isCueBall() || event.other->isCueBall();
    if (withCue && !cueMet) {
      if (!meets(event, kCueBall, way.first)) return std::nullopt;
      if (cueCushions != (way.kind == PlanKind::Kick ? way.cushions : 0)) return std::nullopt;
      cueMet = true;
    }
    if (event.ball != way.target && *event.other != way.target) continue;
    // A second contact before the last leg is another shot.
    if (targetHit) return std::nullopt;
    if (way.kind == PlanKind::Carom && !withCue) return std::nullopt;
    if (way.kind == PlanKind::Combination && withCue) return std::nullopt;
    targetHit = true;
    if (way.kind != PlanKind::Bank) return event.time_s;
  }
  return std::nullopt;
}

/// Where a ball heads once it rolls: its slide keeps (5 v + 2 R (ω × k)) / 7.
double rollingDirection(const BallState& s, double radius_m) {
  const Vector3 v = s.velocity;
  return std::atan2(5.0 * v.y - 2.0 * radius_m * s.spin.x, 5.0 * v.x + 2.0 * radius_m * s.spin.y);
}

}  // namespace

std::optional<double> legError(const Simulator& simulator, const ShotWay& way, const Strike& strike) {
  const auto played = simulator.shoot(way.balls, strike);
  if (!played) return std::nullopt;
  const auto time_s = lastLeg_s(way, *played);
  if (!time_s) return std::nullopt;
  const auto path = std::ranges::find(played->paths, way.target, &BallPath::ball);
  const BallState state = path->stateAt(*time_s + kAfter_s);
  if (std::hypot(state.velocity.x, state.velocity.y) < 1e-3) return std::nullopt;
  const double going_rad = rollingDirection(state, simulator.parameters().ballRadius_m);
  return wrapAngle(going_rad - way.wanted_rad(planOf(state.position)));
}

std::optional<Strike> solveAim(const Simulator& simulator, const ShotWay& way, Strike strike, double slope) {
  double gain = std::copysign(std::max(std::abs(slope), kSmallestSlope), slope);
  std::optional<double> lastError;
  double lastAim_rad = strike.aim_rad;
  double step_rad = 0.0;
  const double guess_rad = strike.aim_rad;
  for (std::size_t look = 0; look < kLooks_deg.size() && !legError(simulator, way, strike); ++look)
    strike.aim_rad = guess_rad + radiansFromDegrees(kLooks_deg.at(look));
  for (int trial = 0; trial < kMostTrials; ++trial) {
    const auto error = legError(simulator, way, strike);
    if (!error) {
      // Past the ball's edge, or off a meant way: half as far.
      if (!lastError || std::abs(step_rad) < kGood_rad) return std::nullopt;
      step_rad *= 0.5;
      strike.aim_rad = lastAim_rad + step_rad;
      continue;
    }
    if (std::abs(*error) < kGood_rad) return strike;
    if (lastError && strike.aim_rad != lastAim_rad) {
      const double measured = (*error - *lastError) / (strike.aim_rad - lastAim_rad);
      if (std::abs(measured) > kSmallestSlope) gain = measured;
    }
    lastError = error;
    lastAim_rad = strike.aim_rad;
    step_rad = std::clamp(-*error / gain, -kLargestStep_rad, kLargestStep_rad);
    strike.aim_rad += step_rad;
  }
  return std::nullopt;
}

}  // namespace ferrule
