// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/frame_follower.h"

#include "core/rules/referee.h"
#include "core/rules/ruling_text.h"

namespace ferrule {

namespace {

GameState beginning(const RuledShot& ruled, const ShotReading& reading, const SurfaceLines& lines) {
  const RuleSet rules = worldRules(ruled.game, ruled.edition);
  if (reading.outcome == Outcome::Break) return newFrame(rules, ruled.ruling.shooter, lines);
  std::vector<BallName> balls;
  for (const BallAt& at : reading.before)
    balls.push_back(at.ball);
  return joinedFrame(rules, balls, ruled.ruling.shooter, lines);
}

}  // namespace

FrameFollower::FrameFollower(const MeasuredTable& measured) : lines_(surfaceLines(measured.table, measured.balls)) {}

std::optional<GameState> FrameFollower::before(const StoredShot& shot) {
  const auto ruled = shot.ruling ? rulingFromText(shot.ruling->content) : std::nullopt;
  if (!ruled) {
    state_.reset();
    return std::nullopt;
  }
  if (!state_ || rack_ != ruled->frame) state_ = beginning(*ruled, shot.reading, lines_);
  rack_ = ruled->frame;
  GameState before = *state_;
  before.atTable = ruled->ruling.shooter;
  state_ = apply(before, ruled->ruling);
  return before;
}

}  // namespace ferrule
