// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/asked_command.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/words/asked_sentence.h"
#include "core/base/text_file.h"
#include "core/measure/asked_shots.h"
#include "core/measure/table_fingerprint.h"

namespace ferrule {

namespace {

struct Call {
  std::string commands;
  std::string measured;
  std::string record;
  std::string session;
};

Result<std::vector<NumberedDelivery>> delivered(const Call& call) {
  if (!call.measured.empty()) return readDeliveries(call.measured);
  auto record = Record::open(call.record, {.mode = RecordMode::ReadOnly});
  if (!record) return tl::make_unexpected(record.error());
  const auto session = sessionNamed(*record, call.session);
  if (!session) return tl::make_unexpected(session.error());
  return deliveriesOf(*record, session->id);
}

Result<void> compare(const Call& call) {
  const auto text = readTextFile(call.commands);
  if (!text) return tl::make_unexpected(text.error());
  const auto asked = parseAskedCsv(*text, call.commands);
  if (!asked) return tl::make_unexpected(asked.error());
  const auto shots = delivered(call);
  if (!shots) return tl::make_unexpected(shots.error());
  const AskedMatch match = matchAsked(*asked, *shots);
  QStringList missing;
  for (const int number : match.missing)
    missing << QString::number(number);
  const std::string& where = call.measured.empty() ? call.session : call.measured;
  if (match.shots.empty()) {
    return failure(ErrorCode::NotFound, "shot " + missing.join(QStringLiteral(", ")).toStdString(), where);
  }
  if (!missing.isEmpty()) printNote(QStringLiteral("Asked, but not found: shot %1.").arg(missing.join(", ")));
  const QStringList lines = askedLines(askedDelivered(match.shots), Numbers());
  for (const QString& line : lines)
    printResult(line);
  if (lines.isEmpty()) {
    printNote(QStringLiteral("Nothing was both asked and measured in %1 shots or more; ask for more of them.")
                  .arg(kFewestAsked));
  }
  return {};
}

}  // namespace

void addAskedCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("asked", "Set what was asked of a list of shots against what was delivered");
  const auto call = std::make_shared<Call>();
  command->add_option("--commands", call->commands, "CSV: shot, aim_deg, speed_m_s, side, height, elevation_deg")
      ->required();
  CLI::Option* measured = command->add_option("measured", call->measured, "A measured.json");
  CLI::Option* record = command->add_option("--record", call->record, "Or the record");
  CLI::Option* session = command->add_option("--session", call->session, "The session's name; the newest of that name");
  record->needs(session);
  session->needs(record);
  measured->excludes(record);
  command->callback([call, &status] {
    if (call->measured.empty() && call->record.empty()) {
      printNote(QStringLiteral("Name a measured.json, or a record and a session of it."));
      status = 2;
      return;
    }
    const auto done = compare(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
