// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/drill_command.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/words/drill_words.h"
#include "app/words/trade_words.h"
#include "core/drills/drill_file.h"
#include "core/measure/drill_keeping.h"
#include "core/measure/table_fingerprint.h"

namespace ferrule {

namespace {

struct Call {
  std::string record;
  std::string session;
  std::string drill;
  bool list = false;
};

/// The built-in drills and a record's own.
Result<std::vector<Drill>> drillsOf(Record* record) {
  std::vector<Drill> drills = builtInDrills();
  if (record == nullptr) return drills;
  const auto own = ownDrills(*record);
  if (!own) return tl::make_unexpected(own.error());
  drills.insert(drills.end(), own->begin(), own->end());
  return drills;
}

void printDrill(const Drill& drill) {
  printResult(QString::fromStdString(drill.key).leftJustified(22) + QLatin1Char(' ') + drillTitle(drill));
}

void printTrial(const Drill& played, const DrillTrial& trial, int number, const Numbers& numbers) {
  const auto met = trial.succeeded();
  QString line = QStringLiteral("try %1  set-up %2  %3")
                     .arg(number, 3)
                     .arg(trial.station + 1)
                     .arg(!met   ? QStringLiteral("not all known")
                          : *met ? QStringLiteral("met")
                                 : QStringLiteral("missed"));
  if (trial.missSide) line += QStringLiteral(", ") + missWords(*trial.missSide);
  const auto& goals = played.stations[trial.station].goals;
  for (std::size_t i = 0; i < trial.goals.size() && i < goals.size(); ++i) {
    if (trial.goals[i].figure)
      line += QStringLiteral(", ") + figureWords(goals[i].kind, *trial.goals[i].figure, numbers);
  }
  if (trial.isFlagged()) line += QStringLiteral(", set up %1 off").arg(numbers.millimetres(*trial.setUpError_m));
  printResult(line);
}

Result<void> count(Record& record, const Drill& drill, const std::string& name) {
  const auto session = sessionNamed(record, name);
  if (!session) return tl::make_unexpected(session.error());
  const auto run = runFromSession(record, session->id, drill, std::nullopt);
  if (!run) return tl::make_unexpected(run.error());
  const Numbers numbers;
  const Drill played = run->played();
  if (run->trials.empty()) {
    printNote(QStringLiteral("No shot of this session was played from the set-up of this drill."));
    return {};
  }
  int number = 0;
  for (const DrillTrial& trial : run->trials)
    printTrial(played, trial, ++number, numbers);
  const DrillScore score = scoreOf(played, run->trials);
  for (std::size_t i = 0; i < score.goals.size(); ++i)
    printResult(QStringLiteral("%1: %2").arg(goalWords(played.stations.front().goals[i], numbers),
                                             shareWords(score.goals[i].share, numbers)));
  printNote(QStringLiteral("In full %1").arg(shareWords(score.all, numbers)));
  if (score.flagged > 0)
    printNote(
        QStringLiteral("%1 set up worse than 15 mm; they count all the same.").arg(counted(score.flagged, "trial")));
  return {};
}

Result<void> carryOut(const Call& call) {
  if (call.record.empty()) {
    const auto drills = drillsOf(nullptr);
    for (const Drill& drill : *drills)
      printDrill(drill);
    return {};
  }
  // Opening for writing would make a record where there is none.
  if (auto there = Record::open(call.record, {.mode = RecordMode::ReadOnly}); !there)
    return tl::make_unexpected(there.error());
  auto record = Record::open(call.record);
  if (!record) return tl::make_unexpected(record.error());
  const auto drills = drillsOf(&*record);
  if (!drills) return tl::make_unexpected(drills.error());
  if (call.list) {
    for (const Drill& drill : *drills)
      printDrill(drill);
    return {};
  }
  const auto drill = std::ranges::find(*drills, call.drill, &Drill::key);
  if (drill == drills->end()) return failure(ErrorCode::NotFound, call.drill, "ferrule drill --list");
  return count(*record, *drill, call.session);
}

}  // namespace

void addDrillCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("drill", "Find the tries at a drill in a recorded session and score them");
  const auto call = std::make_shared<Call>();
  CLI::Option* list = command->add_flag("--list", call->list, "List the drills, with --record also its own");
  CLI::Option* record = command->add_option("--record", call->record, "The record");
  CLI::Option* session =
      command->add_option("--session", call->session, "The session's name; the newest of that name")->needs(record);
  CLI::Option* drill = command->add_option("--drill", call->drill, "The drill's key")->needs(session);
  session->needs(drill);
  command->require_option(1, 4);
  list->excludes(session)->excludes(drill);
  command->callback([call, list, session, &status] {
    if (list->count() == 0 && session->count() == 0) throw CLI::RequiredError("--list or --session");
    const auto done = carryOut(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
