// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/position_call.h"

#include <algorithm>

#include "app/console/console_output.h"
#include "core/geometry/units.h"
#include "core/measure/plan_situation.h"
#include "core/measure/player_scatter.h"

namespace ferrule {

Result<PlayerLevel> levelNamed(const std::string& name) {
  if (name.empty()) return PlayerLevel::Club;
  const auto known = playerLevelFromText(name);
  if (!known) return failure(ErrorCode::NotFound, "level \"" + name + "\"", "beginner, club, expert");
  return *known;
}

tl::unexpected<Error> aboutPosition(const std::string& file, Error error) {
  if (error.code == ErrorCode::NotFound && error.subject == "cue ball") {
    return failure(ErrorCode::FieldMissing, file, "balls: cue");
  }
  if (error.code == ErrorCode::NotFound) return failure(ErrorCode::NotFound, error.subject, file);
  if (error.code == ErrorCode::FieldInvalid) error.detail = error.subject + "." + error.detail;
  error.subject = file;
  return tl::make_unexpected(std::move(error));
}

Result<Situation> situationIn(const PositionFile& file, const std::string& name) {
  Game game = Game::EightBall;
  if (!file.wish.game.empty()) {
    const auto known = gameFromText(file.wish.game);
    if (!known) return failure(ErrorCode::FieldInvalid, name, "game");
    game = *known;
  }
  std::vector<BallName> objects;
  for (const BallAt& ball : file.balls) {
    if (!ball.ball.isCueBall()) objects.push_back(ball.ball);
  }
  const Table& table = file.measured.table;
  const RuleSet rules = worldRules(game);
  GameState state = joinedFrame(rules, objects, Seat::First, surfaceLines(table, file.measured.balls));
  state.groupsKnown = true;
  if (game == Game::EightBall && isRacked(game, file.balls, table, file.measured.balls)) {
    state = newFrame(rules, Seat::First, surfaceLines(table, file.measured.balls));
  } else if (game != Game::EightBall && isRacked(game, file.balls, table, file.measured.balls)) {
    state.phase = Phase::Break;
  }
  state.groupOfFirst = groupFromText(file.wish.group);
  state.cueBall = CueBallPlace::AsItLies;
  if (file.wish.ballInHand) {
    state.cueBall = state.phase == Phase::Break ? CueBallPlace::InHandBehindString : CueBallPlace::InHandAnywhere;
  }
  return situationFrom(state, file.balls, table);
}

Result<Scatter> scatterIn(const ForPlayer& call, const PositionFile& file) {
  const auto wanted = levelNamed(call.level);
  if (!wanted) return tl::make_unexpected(wanted.error());
  const PlayerLevel level = *wanted;
  Scatter scatter = scatterOf(level);
  if (!call.player.empty()) {
    RecordOptions reading;
    reading.mode = RecordMode::ReadOnly;
    auto record = Record::open(call.record, reading);
    if (!record) return tl::make_unexpected(record.error());
    const auto estimate = playerScatter(*record, call.player, scatter, file.parameters);
    if (!estimate) return tl::make_unexpected(estimate.error());
    scatter = estimate->player;
    const QString name = QString::fromStdString(call.player);
    if (estimate->aims == 0) {
      printNote(QStringLiteral("%1 has no pot with a measured aim in the record: the %2 level stands in.")
                    .arg(name, QString::fromLatin1(toText(level).data())));
    } else {
      printNote(QStringLiteral("%1's aim from %2: %3 degrees (95 % interval %4 to %5).")
                    .arg(name, counted(estimate->aims, "shot"))
                    .arg(degreesFromRadians(scatter.aim_rad), 0, 'f', 3)
                    .arg(degreesFromRadians(estimate->leastAim_rad), 0, 'f', 3)
                    .arg(degreesFromRadians(estimate->mostAim_rad), 0, 'f', 3));
    }
  }
  if (file.wish.aimSpread_rad) scatter.aim_rad = *file.wish.aimSpread_rad;
  if (file.wish.speedSpread) scatter.speed = *file.wish.speedSpread;
  if (file.wish.tipSpread) scatter.side = scatter.height = *file.wish.tipSpread;
  return scatter;
}

}  // namespace ferrule
