// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/player_scatter.h"

#include <memory>

#include "core/geometry/units.h"
#include "core/measure/delivered_strike.h"
#include "core/measure/plan_situation.h"
#include "core/planner/shot_review.h"

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

std::optional<StrikeEvidence> evidenceOf(const Planner& planner, const Table& table, const ShotReading& shot,
                                         const Scatter& prior) {
  const Delivery& d = shot.delivery;
  const BallAt* cueBall = ballIn(shot.before, kCueBall);
  const PhysicsParameters& p = planner.simulator().parameters();
  const auto delivered = deliveredStrike(d, p);
  if (!shot.target || !delivered || cueBall == nullptr) return std::nullopt;
  const Strike& strike = *delivered;
  const auto meant = meantPlan(planner, anyBall(shot.before, table), {shot.target->ball, shot.target->pocket},
                               shot.target->cut_rad.has_value(), strike, prior);
  if (!meant) return std::nullopt;
  const Stance stance = stanceOf(planner.simulator().bed(), shot.before, cueBall->position, strike.aim_rad);
  // What the stance and the length widen is theirs, not the player's.
  const BallAt* first = ballIn(shot.before, meant->first);
  const double way_m = first == nullptr ? 0.0 : distance(first->position, cueBall->position) - 2.0 * p.ballRadius_m;
  const double factor = scatterFor({1.0, 0.0, 0.0, 0.0, 0.0}, stance, strike.elevation_rad, way_m).aim_rad;
  const double off_rad = wrapAngle(strike.aim_rad - meant->strike.aim_rad);
  StrikeEvidence evidence;
  evidence.kind = strikeKindOf(stance, strike.speed_mps);
  evidence.aim_rad = StrikeEvidence::Part{0.0, off_rad / factor, d.aim_rad->standardUncertainty / factor};
  return evidence;
}

}  // namespace

Result<ScatterEstimate> playerScatter(Record& record, const std::string& player, const Scatter& prior,
                                      const PhysicsParameters& parameters) {
  const auto known = record.playerNamed(player);
  if (!known) return tl::make_unexpected(known.error());
  if (!*known) return failure(ErrorCode::NotFound, player, record.path());
  const PlayerId id = (*known)->id;
  std::vector<StrikeEvidence> strikes;
  std::unique_ptr<Planner> planner;
  std::optional<MeasuredTable> plannersTable;
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  for (const SessionSummary& session : *sessions) {
    const auto frames = record.frames(session.id);
    if (!frames) return tl::make_unexpected(frames.error());
    std::optional<MeasuredTable> table;  // read with the session's first shot of the player
    for (const FrameSummary& frame : *frames) {
      const auto shots = record.shots(frame.id);
      if (!shots) return tl::make_unexpected(shots.error());
      for (const ShotSummary& summary : *shots) {
        if (summary.player != id || !summary.target || !summary.delivery.aim_rad) continue;
        if (!table) {
          auto measured = record.tableOf(session.id);
          if (!measured) return tl::make_unexpected(measured.error());
          table = std::move(*measured);
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
        const auto shot = record.shot(summary.id);
        if (!shot) return tl::make_unexpected(shot.error());
        if (const auto evidence = evidenceOf(*planner, table->table, shot->reading, prior))
          strikes.push_back(*evidence);
      }
    }
  }
  return estimateScatter(strikes, prior);
}

}  // namespace ferrule
