// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/judge_command.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/console/interrupt.h"
#include "app/console/position_call.h"
#include "app/words/judgement_sentence.h"
#include "core/measure/judge_session.h"
#include "core/measure/table_fingerprint.h"

namespace ferrule {

namespace {

struct Call {
  std::string record;
  std::string session;
  std::string level;
  bool again = false;
};

void printJudged(const JudgedShot& judged) {
  printResult(QStringLiteral("shot %1  %2").arg(judged.shot.number, 3).arg(judgementSentence(judged)));
}

Result<void> judge(const Call& call) {
  JudgeOptions options;
  options.again = call.again;
  const auto level = levelNamed(call.level);
  if (!level) return tl::make_unexpected(level.error());
  options.level = *level;
  // Opening for writing would make a record where there is none.
  if (auto there = Record::open(call.record, {.mode = RecordMode::ReadOnly}); !there)
    return tl::make_unexpected(there.error());
  auto record = Record::open(call.record);
  if (!record) return tl::make_unexpected(record.error());
  const auto session = sessionNamed(*record, call.session);
  if (!session) return tl::make_unexpected(session.error());
  const Interrupt interrupt;
  JobControl job = consoleJob();
  job.stop = interrupt.token();
  const auto report = judgeSession(*record, session->id, options, job, printJudged);
  if (!report) return tl::make_unexpected(report.error());
  printNote(QStringLiteral("%1 judged, %2 judged before, %3 without a plan to set beside")
                .arg(counted(report->judged, "shot"))
                .arg(report->known)
                .arg(report->without));
  return {};
}

}  // namespace

void addJudgeCommand(CLI::App& app, int& status) {
  CLI::App* command =
      app.add_subcommand("judge", "Set the suggested shot beside each recorded one: choice loss and delivery loss");
  const auto call = std::make_shared<Call>();
  command->add_option("--record", call->record, "The record")->required();
  command->add_option("--session", call->session, "The session's name; the newest of that name")->required();
  command->add_option("--level", call->level, "beginner, club or expert, for players without shots in the record");
  command->add_flag("--again", call->again, "Also shots that were judged before");
  command->callback([call, &status] {
    const auto done = judge(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
