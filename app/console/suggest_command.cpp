// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/suggest_command.h"

#include <CLI/CLI.hpp>
#include <cstdio>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/console/path_picture.h"
#include "app/words/plan_sentence.h"
#include "core/base/text_file.h"
#include "core/geometry/units.h"
#include "core/measure/plan_situation.h"
#include "core/measure/player_scatter.h"
#include "core/physics/position_file.h"
#include "core/planner/planner.h"
#include "core/planner/suggestion_text.h"

namespace ferrule {

namespace {

struct SuggestCall {
  std::string position;
  std::string record;
  std::string player;
  std::string level;
  std::string output;
  std::string picture;
  double seconds = 1.5;
  std::uint64_t seed = 1;
};

/// The search speaks of "position" and "strike"; the user knows the file.
tl::unexpected<Error> about(const std::string& file, Error error) {
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

Result<Scatter> scatterIn(const SuggestCall& call, const PositionFile& file) {
  PlayerLevel level = PlayerLevel::Club;
  if (!call.level.empty()) {
    const auto known = playerLevelFromText(call.level);
    if (!known) return failure(ErrorCode::NotFound, "level \"" + call.level + "\"", "beginner, club, expert");
    level = *known;
  }
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

/// Empty where nothing has to be said about the list.
QString noteOn(const Suggestion& suggestion) {
  const bool pots =
      std::ranges::any_of(suggestion.plans, [](const RankedPlan& p) { return p.plan.pocket.has_value(); });
  const bool breaks = suggestion.plans.front().plan.kind == PlanKind::Break;
  if (pots || breaks) return {};
  return QStringLiteral("No ball that may be played has a way to a pocket; the suggestions are safeties.");
}

Result<void> suggest(const SuggestCall& call) {
  const auto file = readPositionFile(call.position);
  if (!file) return tl::make_unexpected(file.error());
  const auto situation = situationIn(*file, call.position);
  if (!situation) return tl::make_unexpected(situation.error());
  const auto scatter = scatterIn(call, *file);
  if (!scatter) return tl::make_unexpected(scatter.error());
  const auto planner = Planner::create(file->measured.table, file->parameters);
  if (!planner) return about(call.position, planner.error());
  SearchBudget budget;
  budget.most_s = call.seconds;
  budget.seed = call.seed;
  const auto suggestion = planner->suggest(*situation, {*scatter, *scatter}, budget);
  if (!suggestion) return about(call.position, suggestion.error());
  if (const QString note = noteOn(*suggestion); !note.isEmpty()) printNote(note);
  const std::string text = suggestionText(*suggestion, *scatter, planSentences(*suggestion));
  if (call.output.empty()) {
    std::fwrite(text.data(), 1, text.size(), stdout);
  } else if (auto written = writeTextFile(call.output, text); !written) {
    return written;
  }
  if (call.picture.empty()) return {};
  const Plan& best = suggestion->plans.front().plan;
  const Situation placed = best.cueBall ? withCueBallAt(*situation, *best.cueBall) : *situation;
  const auto played = planner->simulator().shoot(placed.balls, best.strike);
  if (!played) return about(call.position, played.error());
  return writeTextFile(call.picture, pathPicture(file->measured, *played));
}

}  // namespace

void addSuggestCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("suggest", "Rank the shots of a position for a player");
  const auto call = std::make_shared<SuggestCall>();
  command->add_option("POSITION", call->position, "The position file: table, balls, game, player")->required();
  auto* record = command->add_option("--record", call->record, "The record that knows the player");
  command->add_option("--player", call->player, "Whose scatter to use")->needs(record);
  command->add_option("--level", call->level, "beginner, club or expert, where the file gives no scatter");
  command->add_option("--seconds", call->seconds, "How long to search at most")->check(CLI::Range(0.05, 600.0));
  command->add_option("--seed", call->seed, "Of the random numbers");
  command->add_option("-o,--output", call->output, "Write the plans here instead of on standard output");
  command->add_option("--picture", call->picture, "Draw the first plan as an SVG file");
  command->callback([call, &status] {
    const auto done = suggest(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
