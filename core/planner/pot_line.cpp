// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/pot_line.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// A typical object ball's speed, for the pocket's acceptance.
constexpr double kTypicalSpeed_mps = 1.5;
/// How throw varies with the tip's error and the speed's, rad per ball radius and rad per whole speed: of the order of
/// the slopes of Alciatore's throw plots, technical proof A.28, between stun and roll.
constexpr double kThrowBySide_rad = 0.14;
constexpr double kThrowBySpeed_rad = 0.035;
/// Throw takes up to 1/7 off a small cut that was not meant, less when the cue ball rolls.
constexpr double kThrowOff = 0.9;
/// Parts of a ball's width at which it is looked for, from its middle.
constexpr double kLookOffsets[] = {0.0, -0.5, 0.5, -0.9, 0.9};

}  // namespace

std::optional<PotLine> openRun(const Layout& layout, BallName ball, PocketName pocket, const PocketWindows& windows,
                               double ballRadius_m) {
  const TablePoint from = layout.at(ball);
  const PocketWindow window = windows.at(pocket, from, kTypicalSpeed_mps);
  if (window.halfWidth_rad <= 0.0) return std::nullopt;
  const double run_m = windows.awayFrom(pocket, from);
  const TableVector along{std::cos(window.middle_rad), std::sin(window.middle_rad)};
  const BallMask moving = BallMask::of(ball) | BallMask::of(kCueBall);
  if (!isOpen(layout, from, from + run_m * along, moving, ballRadius_m)) return std::nullopt;
  return PotLine{ball, pocket, from - 2.0 * ballRadius_m * along, 0.0, 0.0, run_m, window};
}

std::optional<PotLine> withCueBall(PotLine run, const Layout& layout, TablePoint cueBall, double ballRadius_m) {
  const TableVector to = run.ghost - cueBall;
  run.way_m = length(to);
  const TableVector along{std::cos(run.window.middle_rad), std::sin(run.window.middle_rad)};
  // A cue ball that already stands at the ghost is played straight.
  const bool touching = run.way_m < 1e-6;
  run.cut_rad = touching ? 0.0 : std::acos(std::clamp(dot(to, along) / run.way_m, -1.0, 1.0));
  if (run.cut_rad > kMostCut_rad) return std::nullopt;
  const BallMask moving = BallMask::of(run.ball) | BallMask::of(kCueBall);
  if (!isOpen(layout, cueBall, run.ghost, moving, ballRadius_m)) return std::nullopt;
  return run;
}

double chanceOf(const PotLine& line, const Scatter& scatter, double ballRadius_m) {
  const double gain = kThrowOff * line.way_m / (2.0 * ballRadius_m * std::max(std::cos(line.cut_rad), 0.1));
  const double spread_rad =
      std::hypot(scatter.aim_rad * gain, scatter.side * kThrowBySide_rad, scatter.speed * kThrowBySpeed_rad);
  if (spread_rad <= 0.0) return 1.0;
  return std::erf(line.window.halfWidth_rad / (spread_rad * std::numbers::sqrt2));
}

bool canMeet(const Layout& layout, TablePoint cueBall, BallName ball, double ballRadius_m) {
  const TablePoint target = layout.at(ball);
  const TableVector to = target - cueBall;
  const double away_m = length(to);
  if (away_m <= 2.0 * ballRadius_m + kClearance_m) return true;
  const BallMask moving = BallMask::of(ball) | BallMask::of(kCueBall);
  const TableVector along = to / away_m;
  return std::ranges::any_of(kLookOffsets, [&](double offset) {
    // Where the cue ball's centre is at contact when its way passes the ball's centre at this offset.
    const double beside_m = offset * 2.0 * ballRadius_m;
    const double before_m = std::sqrt(4.0 * ballRadius_m * ballRadius_m - beside_m * beside_m);
    const TablePoint contact = target - before_m * along + beside_m * perpendicular(along);
    return isOpen(layout, cueBall, contact, moving, ballRadius_m);
  });
}

}  // namespace ferrule
