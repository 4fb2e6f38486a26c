// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/player_scatter.h"

#include <map>
#include <memory>
#include <ranges>

#include "core/geometry/units.h"
#include "core/measure/delivered_strike.h"
#include "core/measure/plan_situation.h"
#include "core/measure/player_history.h"
#include "core/planner/shot_review.h"
#include "core/progress/set_ups.h"

namespace ferrule {

namespace {

/// Every ball may be met: what was meant is known from the target.
Situation anyBall(const Position& balls, const Table& table) {
  std::vector<BallName> objects;
  for (const BallAt& ball : balls) {
    if (!ball.ball.isCueBall()) objects.push_back(ball.ball);
  }
  return situationFrom(joinedFrame(worldRules(Game::StraightPool), objects), balls, table);
}

/// How far a shot was from the player's own mean in a position that he played again and again.
struct Repeat {
  std::optional<double> speed;   ///< as a share of the mean
  std::optional<double> side;    ///< ball radii
  std::optional<double> height;  ///< ball radii
};

/// By the shot's id.
std::map<std::int64_t, Repeat> repeatsOf(const PlayerHistory& history) {
  std::map<std::int64_t, Repeat> repeats;
  const auto setUps = setUpsOf(history);
  const auto note = [&](RepeatedValue value, std::optional<double> Repeat::*part) {
    const auto away = awayFromOwnMean(history, setUps, value);
    for (std::size_t i = 0; i < away.size(); ++i) {
      if (away[i]) repeats[history.shots[i].id].*part = away[i];
    }
  };
  note(RepeatedValue::Speed, &Repeat::speed);
  note(RepeatedValue::Side, &Repeat::side);
  note(RepeatedValue::Height, &Repeat::height);
  return repeats;
}

/// asked: what the player's own mean counts as; unit: of the delivery, in the part's; factor: by which the stance
/// widens.
std::optional<StrikeEvidence::Part> partOf(const std::optional<double>& away, const std::optional<Measured>& delivered,
                                           double asked, double unit, double factor) {
  if (!away || !delivered) return std::nullopt;
  return StrikeEvidence::Part{asked, asked + *away / factor, delivered->standardUncertainty * unit / factor};
}

/// The aim of a shot that was meant for a pocket. Nothing where it was not, or where no aim would have done.
std::optional<StrikeEvidence::Part> aimOf(const Planner& planner, const Table& table, const ShotReading& shot,
                                          const Strike& strike, const Stance& stance, TablePoint cueBall,
                                          const Scatter& prior) {
  if (!shot.target || !shot.delivery.aim_rad) return std::nullopt;
  const auto meant = meantPlan(planner, anyBall(shot.before, table), {shot.target->ball, shot.target->pocket},
                               shot.target->cut_rad.has_value(), strike, prior);
  if (!meant) return std::nullopt;
  const BallAt* first = ballIn(shot.before, meant->first);
  const double way_m =
      first == nullptr ? 0.0 : distance(first->position, cueBall) - 2.0 * planner.simulator().parameters().ballRadius_m;
  const double factor = scatterFor({1.0, 0.0, 0.0, 0.0, 0.0}, stance, strike.elevation_rad, way_m).aim_rad;
  const double off_rad = wrapAngle(strike.aim_rad - meant->strike.aim_rad);
  return StrikeEvidence::Part{0.0, off_rad / factor, shot.delivery.aim_rad->standardUncertainty / factor};
}

/// What the stance and the length widen is theirs, not the player's, and is taken off.
std::optional<StrikeEvidence> evidenceOf(const Planner& planner, const Table& table, const ShotReading& shot,
                                         const Repeat& repeat, const Scatter& prior) {
  const Delivery& d = shot.delivery;
  const BallAt* cueBall = ballIn(shot.before, kCueBall);
  const auto strike = deliveredStrike(d, planner.simulator().parameters());
  if (!strike || cueBall == nullptr) return std::nullopt;
  const Stance stance = stanceOf(planner.simulator().bed(), shot.before, cueBall->position, strike->aim_rad);
  StrikeEvidence evidence;
  evidence.kind = strikeKindOf(stance, strike->speed_mps);
  evidence.aim_rad = aimOf(planner, table, shot, *strike, stance, cueBall->position, prior);
  const double factor = scatterFor({0.0, 1.0, 0.0, 0.0, 0.0}, stance, strike->elevation_rad, 0.0).speed;
  evidence.speed_mps = partOf(repeat.speed, d.speed_mps, 1.0, 1.0 / strike->speed_mps, factor);
  evidence.side = partOf(repeat.side, d.side, 0.0, 1.0, factor);
  evidence.height = partOf(repeat.height, d.height, 0.0, 1.0, factor);
  if (!evidence.aim_rad && !evidence.speed_mps && !evidence.side && !evidence.height) return std::nullopt;
  return evidence;
}

}  // namespace

Result<ScatterEstimate> playerScatter(Record& record, const std::string& player, const Scatter& prior,
                                      const PhysicsParameters& parameters) {
  const auto history = playerHistory(record, player, {});
  if (!history) return tl::make_unexpected(history.error());
  const std::map<std::int64_t, Repeat> repeats = repeatsOf(*history);
  std::vector<StrikeEvidence> strikes;
  std::unique_ptr<Planner> planner;
  std::optional<MeasuredTable> table;
  std::optional<MeasuredTable> plannersTable;
  std::optional<std::size_t> session;  // whose table it is
  for (const PlayedShot& played : history->shots | std::views::reverse) {
    if (strikes.size() >= kMostScatterShots) break;
    const auto repeat = repeats.find(played.id);
    if (!played.tracked || (!played.pocket && repeat == repeats.end())) continue;
    if (session != played.session) {
      auto measured = record.tableOf(SessionId{history->sessions[played.session].id});
      if (!measured) return tl::make_unexpected(measured.error());
      table = std::move(*measured);
      session = played.session;
    }
    if (plannersTable != *table) {
      PhysicsParameters p = parameters;
      p.ballRadius_m = table->balls.radius_m();
      p.ballMass_kg = table->balls.mass_kg;
      auto made = Planner::create(table->table, p);
      if (!made) return tl::make_unexpected(made.error());
      planner = std::make_unique<Planner>(std::move(*made));
      plannersTable = *table;
    }
    const auto shot = record.shot(ShotId{played.id});
    if (!shot) return tl::make_unexpected(shot.error());
    const Repeat repeated = repeat == repeats.end() ? Repeat{} : repeat->second;
    if (const auto evidence = evidenceOf(*planner, table->table, shot->reading, repeated, prior))
      strikes.push_back(*evidence);
  }
  return estimateScatter(strikes, prior);
}

}  // namespace ferrule
