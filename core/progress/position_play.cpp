// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/position_play.h"

#include <array>
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
  if (shot.cushionMet != false) return std::nullopt;
  const Pocket pocket = pockets(table.table)[static_cast<std::size_t>(*shot.pocket)];
  const TablePoint contact = ghostBall(*shot.objectBall, pocket.mouth - *shot.objectBall, table.ballRadius_m);
  const TableVector went = *shot.rest - contact;
  const TableVector meant = *shot.meant.rest - contact;
  // A ball that was to stop, or did, went no way; half a ball of drift has no direction.
  const double still_m = table.ballRadius_m;
  if (length(went) > still_m && length(meant) > still_m &&
      std::abs(wrapAngle(direction(went) - direction(meant))) > kSameWay_rad)
    return std::nullopt;
  return length(went) - length(meant);
}

PositionPlay positionPlay(const PlayerHistory& history, const Resampling& resampling) {
  PositionPlay play;
  std::vector<Observation> sides;
  std::array<std::vector<Observation>, 2> losses;  // right, wrong
  for (const PlayedShot& shot : history.shots) {
    const auto wrong = isOnWrongSide(shot, history.tableOf(shot));
    if (!wrong) continue;
    sides.push_back({shot.session, *wrong ? 1.0 : 0.0, {}});
    if (shot.deliveryLoss) losses[*wrong ? 1 : 0].push_back({shot.session, *shot.deliveryLoss, {}});
  }
  play.told = static_cast<int>(sides.size());
  play.wrongSide = orNoValues(shareOf(bySession(sides)));
  play.lossRight = orNoValues(meanOf(bySession(losses[0]), resampling));
  play.lossWrong = orNoValues(meanOf(bySession(losses[1]), resampling));
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
