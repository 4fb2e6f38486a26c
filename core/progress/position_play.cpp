// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/position_play.h"

#include <cmath>
#include <numbers>

#include "core/geometry/units.h"
#include "core/progress/shot_errors.h"
#include "core/table/ghost_ball.h"

namespace ferrule {

namespace {

/// The turn that the pot of a ball needs from a place, + to the left; nothing where none is straight.
std::optional<double> turn_rad(TablePoint cueBall, TablePoint ball, const Pocket& pocket, double radius_m) {
  const TableVector way = pocket.mouth - ball;
  if (!(length(way) > 0.0)) return std::nullopt;
  const TableVector approach = ghostBall(ball, way, radius_m) - cueBall;
  if (!(length(approach) > 0.0)) return std::nullopt;
  return wrapAngle(direction(way) - direction(approach));
}

bool fell(const PlayedShot& shot) {
  return isPotAttempt(shot) && shot.made && !shot.foul;
}

Answer<Estimate> orNoValues(Answer<Estimate> answer) {
  if (!answer && answer.error().have == 0) return shortOf(ShortageKind::NoValues);
  return answer;
}

}  // namespace

std::optional<bool> isOnWrongSide(const PlayedShot& shot, const PlayedTable& table) {
  if (!fell(shot) || !shot.meant.rest || !shot.rest || !shot.nextBall) return std::nullopt;
  const auto openings = pockets(table.table);
  const Pocket* next = nullptr;
  double meant_rad = std::numbers::pi / 2.0;
  for (const Pocket& pocket : openings) {
    const auto needed = turn_rad(*shot.meant.rest, *shot.nextBall, pocket, table.ballRadius_m);
    if (!needed || std::abs(*needed) >= std::abs(meant_rad)) continue;
    next = &pocket;
    meant_rad = *needed;
  }
  if (next == nullptr || std::abs(meant_rad) < kStraight_rad) return std::nullopt;
  const auto left = turn_rad(*shot.rest, *shot.nextBall, *next, table.ballRadius_m);
  if (!left) return std::nullopt;
  return *left * meant_rad < 0.0 && std::abs(*left) >= kStraight_rad;
}

std::optional<double> longBy_m(const PlayedShot& shot, const PlayedTable& table) {
  if (!fell(shot) || !shot.meant.rest || !shot.rest || !shot.objectBall || !shot.pocket) return std::nullopt;
  const Pocket pocket = pockets(table.table)[static_cast<std::size_t>(*shot.pocket)];
  const TablePoint contact = ghostBall(*shot.objectBall, pocket.mouth - *shot.objectBall, table.ballRadius_m);
  return distance(*shot.rest, contact) - distance(*shot.meant.rest, contact);
}

PositionPlay positionPlay(const PlayerHistory& history, const Resampling& resampling) {
  PositionPlay play;
  const auto sides = observed(history, [](const PlayedShot& shot, const PlayedTable& table) -> std::optional<double> {
    const auto wrong = isOnWrongSide(shot, table);
    return wrong ? std::optional(*wrong ? 1.0 : 0.0) : std::nullopt;
  });
  play.told = static_cast<int>(sides.size());
  play.wrongSide = orNoValues(shareOf(bySession(sides)));
  const auto loss = [&](bool asked) {
    return orNoValues(
        meanOf(bySession(observed(history,
                                  [asked](const PlayedShot& shot, const PlayedTable& table) -> std::optional<double> {
                                    return isOnWrongSide(shot, table) == asked ? shot.deliveryLoss : std::nullopt;
                                  })),
               resampling));
  };
  play.lossRight = loss(false);
  play.lossWrong = loss(true);
  play.longBy_m = orNoValues(meanOf(bySession(observed(history, ferrule::longBy_m)), resampling));
  play.lossInAll =
      orNoValues(meanOf(bySession(observed(history,
                                           [](const PlayedShot& shot, const PlayedTable&) -> std::optional<double> {
                                             return fell(shot) ? shot.deliveryLoss : std::nullopt;
                                           })),
                        resampling));
  return play;
}

}  // namespace ferrule
