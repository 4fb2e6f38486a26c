// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/coach_command.h"

#include <CLI/CLI.hpp>
#include <array>
#include <memory>
#include <string>
#include <vector>

#include "app/console/console_output.h"
#include "app/console/position_call.h"
#include "app/words/plan_sentence.h"
#include "core/geometry/units.h"
#include "core/planner/coaching.h"

namespace ferrule {

namespace {

constexpr int kSteps = 24;

struct Call {
  std::string position;
  ForPlayer whom;
  std::vector<double> walkTo_mm;
};

/// Fixed by simulations, so that the same position gives the same answer.
SearchBudget budget() {
  SearchBudget budget;
  budget.mostSimulations = 20000;
  return budget;
}

QString row(const QString& whom, const Suggestion& suggestion) {
  const RankedPlan& best = suggestion.plans.front();
  return whom.leftJustified(16) + planWords(best.plan).leftJustified(34) + planSentence(suggestion, 0);
}

/// The position as it is for each level, and for the student where one is named.
Result<void> compare(const Call& call, const Planner& planner, const Situation& situation, const Scatter& student) {
  std::vector<Scatter> players;
  std::vector<QString> names;
  for (const PlayerLevel level : kPlayerLevels) {
    players.push_back(scatterOf(level));
    names.push_back(QString::fromLatin1(toText(level).data()));
  }
  if (!call.whom.player.empty()) {
    players.push_back(student);
    names.push_back(QString::fromStdString(call.whom.player));
  }
  const auto answers = suggestToEach(planner, situation, players, budget());
  if (!answers) return aboutPosition(call.position, answers.error());
  for (std::size_t i = 0; i < answers->size(); ++i)
    printResult(row(names[i], (*answers)[i].suggestion));
  return {};
}

Result<void> walk(const Call& call, const Planner& planner, const Situation& situation, const Scatter& student) {
  const BallAt* cueBall = ballIn(situation.balls, kCueBall);
  if (cueBall == nullptr) return failure(ErrorCode::FieldMissing, call.position, "balls: cue");
  const TablePoint to{metresFromMillimetres(call.walkTo_mm[0]), metresFromMillimetres(call.walkTo_mm[1])};
  const auto place = firstSafetyPlace(planner, situation, student, cueBall->position, to, kSteps, budget());
  if (!place) {
    printResult(QStringLiteral("From nowhere on this way is a safety worth more than the best pot."));
    return {};
  }
  printResult(QStringLiteral("From %1, %2 mm on, a safety is worth more (%3 %) than the best pot (%4 %).")
                  .arg(millimetresFromMetres(place->cueBall.x), 0, 'f', 0)
                  .arg(millimetresFromMetres(place->cueBall.y), 0, 'f', 0)
                  .arg(100.0 * place->safety, 0, 'f', 0)
                  .arg(100.0 * place->attack, 0, 'f', 0));
  return {};
}

Result<void> coach(const Call& call) {
  const auto file = readPositionFile(call.position);
  if (!file) return tl::make_unexpected(file.error());
  const auto situation = situationIn(*file, call.position);
  if (!situation) return tl::make_unexpected(situation.error());
  const auto student = scatterIn(call.whom, *file);
  if (!student) return tl::make_unexpected(student.error());
  const auto planner = Planner::create(file->measured.table, file->parameters);
  if (!planner) return aboutPosition(call.position, planner.error());
  if (auto done = compare(call, *planner, *situation, *student); !done) return done;
  return call.walkTo_mm.empty() ? Result<void>() : walk(call, *planner, *situation, *student);
}

}  // namespace

void addCoachCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("coach", "Show what a position asks of players of different skill");
  const auto call = std::make_shared<Call>();
  command->add_option("POSITION", call->position, "The position file: table, balls, game")->required();
  auto* record = command->add_option("--record", call->whom.record, "The record that knows the student");
  command->add_option("--player", call->whom.player, "The student")->needs(record);
  command->add_option("--level", call->whom.level, "beginner, club or expert: of the student, without shots");
  command
      ->add_option("--walk-to", call->walkTo_mm,
                   "X,Y in mm: move the cue ball there and say from where on the student should play safe")
      ->delimiter(',')
      ->expected(2);
  command->callback([call, &status] {
    const auto done = coach(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
