// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/export_command.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "core/record/export_record.h"

namespace ferrule {

namespace {

struct Call {
  std::string record;
  std::string player;
  std::string folder;
};

int run(const Call& call) {
  RecordOptions reading;
  reading.mode = RecordMode::ReadOnly;
  auto record = Record::open(call.record, reading);
  if (!record) return reportError(record.error());
  ExportOptions options;
  options.folder = call.folder;
  if (!call.player.empty()) options.player = call.player;
  const auto report = exportRecord(*record, options);
  if (!report) return reportError(report.error());
  for (const std::string& file : report->files)
    printResult(QString::fromStdString(file));
  printNote(counted(report->sessions, "session") + QStringLiteral(", ") + counted(report->shots, "shot"));
  return 0;
}

}  // namespace

void addExportCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("export", "Write a record as JSON and CSV");
  const auto call = std::make_shared<Call>();
  command->add_option("--record", call->record, "The record")->required();
  command->add_option("--player", call->player, "Only this player's shots");
  command->add_option("-o,--output", call->folder, "The folder to write to")->required();
  command->callback([call, &status] { status = run(*call); });
}

}  // namespace ferrule
