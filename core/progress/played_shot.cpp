// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/played_shot.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/geometry/units.h"
#include "core/table/ghost_ball.h"

namespace ferrule {

namespace {

bool fellAsMeant(const ShotReading& reading) {
  if (reading.outcome == Outcome::Pot) return true;
  if (reading.outcome == Outcome::Miss) return false;
  return std::ranges::any_of(reading.pocketed, [&](const PocketedBall& fell) {
    return fell.ball == reading.target->ball && fell.pocket == reading.target->pocket;
  });
}

void fillTarget(const ShotReading& reading, const PlayedTable& played, PlayedShot& shot) {
  const Target& target = *reading.target;
  shot.pocket = target.pocket;
  shot.made = fellAsMeant(reading);
  shot.missSide = target.missSide;
  if (!shot.cueBall || !shot.objectBall || reading.firstContact != target.ball) return;
  const Pocket pocket = pockets(played.table)[static_cast<std::size_t>(target.pocket)];
  const TableVector way = pocket.mouth - *shot.objectBall;
  const TablePoint ghost = ghostBall(*shot.objectBall, way, played.ballRadius_m);
  const TableVector approach = ghost - *shot.cueBall;
  if (!(length(approach) > 0.0) || !(length(way) > 0.0)) return;
  const double turn_rad = wrapAngle(direction(way) - direction(approach));
  if (std::abs(turn_rad) >= std::numbers::pi / 2.0) return;
  shot.cut_rad = std::abs(turn_rad);
  if (*shot.cut_rad >= kStraight_rad) shot.cutSide = turn_rad > 0.0 ? CutSide::Left : CutSide::Right;
  shot.cueToGhost_m = length(approach);
  shot.objectToPocket_m = length(way);
  shot.lineError_rad = target.lineError_rad;
}

std::optional<TablePoint> placeIn(const Position& position, BallName ball) {
  const BallAt* found = ballIn(position, ball);
  return found == nullptr ? std::nullopt : std::optional(found->position);
}

std::optional<double> valueOf(const std::optional<Measured>& measured) {
  return measured ? std::optional(measured->value) : std::nullopt;
}

}  // namespace

PlayedShot playedShot(const ShotReading& reading, const PlayedTable& table) {
  PlayedShot shot;
  shot.number = reading.number;
  shot.outcome = reading.outcome;
  shot.verdict = reading.outcomeVerdict;
  shot.tracked = reading.delivery.aim_rad.has_value() && reading.delivery.speed_mps.has_value();
  shot.speed_mps = valueOf(reading.delivery.speed_mps);
  shot.side = valueOf(reading.delivery.side);
  shot.height = valueOf(reading.delivery.height);
  shot.cueBall = placeIn(reading.before, kCueBall);
  shot.rest = placeIn(reading.after, kCueBall);
  shot.foul = reading.scratch || reading.outcome == Outcome::Foul || reading.outcome == Outcome::Scratch;
  shot.potted = static_cast<int>(
      std::ranges::count_if(reading.pocketed, [](const PocketedBall& fell) { return !fell.ball.isCueBall(); }));
  if (reading.outcome == Outcome::Pot && !reading.events.empty()) {
    shot.cushionMet = std::ranges::any_of(reading.events, [](const ShotEvent& event) {
      return event.kind == EventKind::Cushion && event.ball.isCueBall();
    });
  }
  if (reading.target) {
    shot.objectBall = placeIn(reading.before, reading.target->ball);
    fillTarget(reading, table, shot);
  }
  return shot;
}

}  // namespace ferrule
