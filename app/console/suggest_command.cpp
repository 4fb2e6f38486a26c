// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/suggest_command.h"

#include <CLI/CLI.hpp>
#include <cstdio>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/console/path_picture.h"
#include "app/console/position_call.h"
#include "app/words/plan_sentence.h"
#include "core/base/text_file.h"
#include "core/measure/table_fingerprint.h"
#include "core/physics/position_file.h"
#include "core/planner/planner.h"
#include "core/planner/suggestion_text.h"

namespace ferrule {

namespace {

struct SuggestCall {
  std::string position;
  ForPlayer whom;
  std::string output;
  std::string picture;
  double seconds = 1.5;
  std::uint64_t seed = 1;
};

/// Empty where nothing has to be said about the list.
QString noteOn(const Suggestion& suggestion) {
  const bool pots =
      std::ranges::any_of(suggestion.plans, [](const RankedPlan& p) { return p.plan.pocket.has_value(); });
  const bool breaks = suggestion.plans.front().plan.kind == PlanKind::Break;
  if (pots || breaks) return {};
  return QStringLiteral("No ball that may be played has a way to a pocket; the suggestions are safeties.");
}

/// What the record knows of the table, except where the file says otherwise.
Result<PhysicsParameters> parametersOf(const SuggestCall& call, const PositionFile& file) {
  if (call.whom.record.empty()) return file.parameters;
  auto record = Record::open(call.whom.record, {.mode = RecordMode::ReadOnly});
  if (!record) return tl::make_unexpected(record.error());
  const auto known = latestFingerprint(*record, file.measured);
  if (!known) return tl::make_unexpected(known.error());
  if (!*known) return file.parameters;
  printNote(QStringLiteral("with the table's fingerprint of session \"%1\" (%2)")
                .arg(QString::fromStdString((*known)->session), QString::fromStdString((*known)->fingerprint.date)));
  return appliedWhereUsual((*known)->fingerprint, file.parameters, parametersFor(file.measured.balls));
}

Result<void> suggest(const SuggestCall& call) {
  const auto file = readPositionFile(call.position);
  if (!file) return tl::make_unexpected(file.error());
  const auto situation = situationIn(*file, call.position);
  if (!situation) return tl::make_unexpected(situation.error());
  const auto scatter = scatterIn(call.whom, *file);
  if (!scatter) return tl::make_unexpected(scatter.error());
  const auto parameters = parametersOf(call, *file);
  if (!parameters) return tl::make_unexpected(parameters.error());
  const auto planner = Planner::create(file->measured.table, *parameters);
  if (!planner) return aboutPosition(call.position, planner.error());
  SearchBudget budget;
  budget.most_s = call.seconds;
  budget.seed = call.seed;
  const auto suggestion = planner->suggest(*situation, {*scatter, *scatter}, budget);
  if (!suggestion) return aboutPosition(call.position, suggestion.error());
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
  if (!played) return aboutPosition(call.position, played.error());
  return writeTextFile(call.picture, pathPicture(file->measured, *played));
}

}  // namespace

void addSuggestCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("suggest", "Rank the shots of a position for a player");
  const auto call = std::make_shared<SuggestCall>();
  command->add_option("POSITION", call->position, "The position file: table, balls, game, player")->required();
  auto* record = command->add_option("--record", call->whom.record, "The record that knows the player");
  command->add_option("--player", call->whom.player, "Whose scatter to use")->needs(record);
  command->add_option("--level", call->whom.level, "beginner, club or expert, where the file gives no scatter");
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
