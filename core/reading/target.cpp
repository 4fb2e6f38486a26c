// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reading/target.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/units.h"

namespace ferrule {

namespace {

/// A ball that meets a jaw has its centre within half a mouth of the mouth's middle, and this many radii more for the
/// uncertainty of both.
constexpr double kJawReach = 0.3;

/// Where a player aims: the middle of the mouth.
TableVector wayTo(const Pocket& pocket, TablePoint from) {
  return pocket.mouth - from;
}

void fillLine(Target& target, const Pocket& pocket, const FirstHit& hit) {
  const double needed_rad = direction(wayTo(pocket, hit.ballPlace));
  const double error_rad = wrapAngle(direction(hit.ballCourse) - needed_rad);
  target.lineError_rad = error_rad;
  // Signed turn from the cue ball's course to the object ball's; cut too much when it went beyond the needed turn.
  const double neededTurn_rad = wrapAngle(needed_rad - direction(hit.cueCourse));
  if (error_rad == 0.0) return;
  target.missSide = error_rad * neededTurn_rad > 0.0 ? MissSide::Over : MissSide::Under;
}

double cut(const FirstHit& hit) {
  return std::abs(wrapAngle(direction(hit.ballCourse) - direction(hit.cueCourse)));
}

}  // namespace

Target targetOfPot(const Table& table, const PocketedBall& pocketed, const std::optional<FirstHit>& hit) {
  Target target;
  target.ball = pocketed.ball;
  target.pocket = pocketed.pocket;
  if (!hit || hit->ball != pocketed.ball) return target;
  target.cut_rad = cut(*hit);
  const Pocket pocket = pockets(table)[static_cast<std::size_t>(pocketed.pocket)];
  const double error_rad = wrapAngle(direction(hit->ballCourse) - direction(wayTo(pocket, hit->ballPlace)));
  // A ball that reached its pocket over a cushion was not sent along the straight line; one that brushed the jaw was.
  if (hit->ballMetRail && std::abs(error_rad) > TargetLimits{}.lineError_rad) return target;
  fillLine(target, pocket, *hit);
  target.missSide.reset();
  return target;
}

std::optional<Target> targetOfMiss(const Table& table, const FirstHit& hit, const TargetLimits& limits) {
  std::optional<Target> best;
  double least_rad = limits.lineError_rad;
  for (const Pocket& pocket : pockets(table)) {
    const TableVector way = wayTo(pocket, hit.ballPlace);
    const double away_m = length(way);
    const double error_rad = std::abs(wrapAngle(direction(hit.ballCourse) - direction(way)));
    if (error_rad >= least_rad || away_m * std::sin(error_rad) > limits.missDistance_m) continue;
    if (dot(unit(way), pocket.inward) < limits.leastEntry) continue;
    if (hit.ballTravel_m < limits.leastReach * away_m) continue;
    // No stroke cuts a ball by more than a right angle.
    if (std::abs(wrapAngle(direction(way) - direction(hit.cueCourse))) > std::numbers::pi / 2.0) continue;
    Target target;
    target.ball = hit.ball;
    target.pocket = pocket.name;
    target.cut_rad = cut(hit);
    fillLine(target, pocket, hit);
    best = target;
    least_rad = error_rad;
  }
  return best;
}

Target targetOfCall(const Table& table, BallName ball, PocketName pocket, const std::optional<FirstHit>& hit) {
  Target target = targetOfPot(table, {ball, pocket}, hit);
  target.called = true;
  if (!hit || hit->ball != ball) return target;
  // Off a rail and nowhere near the straight line: it may have been meant over the cushion.
  if (hit->ballMetRail && !target.lineError_rad) return target;
  fillLine(target, pockets(table)[static_cast<std::size_t>(pocket)], *hit);
  return target;
}

void describeLine(Target& target, const Table& table, const FirstHit& hit, double radius_m) {
  if (length(hit.line) > 0.0) {
    const double offset_rad = std::abs(wrapAngle(direction(hit.line) - direction(hit.cueCourse)));
    target.fullness = std::max(0.0, 1.0 - std::sin(std::min(offset_rad, std::numbers::pi / 2.0)));
  }
  if (!target.lineError_rad) return;
  const Pocket pocket = pockets(table)[static_cast<std::size_t>(target.pocket)];
  target.lineErrorUncertainty_rad = hit.courseUncertainty_rad;
  target.missAtMouth_m = length(wayTo(pocket, hit.ballPlace)) * std::sin(*target.lineError_rad);
  // The ball goes where the line of centres points: the contact lies off by the same angle.
  target.contactError_m = radius_m * *target.lineError_rad;
}

bool rattled(const Target& target, const Table& table, const ShotReading& reading, double radius_m) {
  const Pocket pocket = pockets(table)[static_cast<std::size_t>(target.pocket)];
  const double reach_m = 0.5 * pocket.mouth_m + kJawReach * radius_m;
  const auto jaws = std::ranges::count_if(reading.events, [&](const ShotEvent& event) {
    return event.kind == EventKind::Cushion && event.ball == target.ball &&
           distance(event.position, pocket.mouth) < reach_m;
  });
  const bool fell =
      std::ranges::find(reading.pocketed, PocketedBall{target.ball, target.pocket}) != reading.pocketed.end();
  return jaws >= 2 || (jaws == 1 && !fell);
}

}  // namespace ferrule
