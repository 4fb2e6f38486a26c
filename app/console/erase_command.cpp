// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/erase_command.h"

#include <CLI/CLI.hpp>
#include <QDateTime>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/words/erase_sentence.h"

namespace ferrule {

namespace {

struct Call {
  std::string record;
  std::string player;
  bool yes = false;
  EraseOptions options;
  bool keepMentions = false;
  bool compact = false;
};

/// Opens a record that is there; erasing makes none.
Result<Record> existing(const std::string& path, RecordMode mode) {
  RecordOptions options;
  options.mode = RecordMode::ReadOnly;
  auto record = Record::open(path, options);
  if (!record || mode == RecordMode::ReadOnly) return record;
  return Record::open(path);
}

/// For a record that could not be written anew when the player was erased.
int compact(const Call& call) {
  auto record = existing(call.record, RecordMode::ReadWrite);
  if (!record) return reportError(record.error());
  const auto namesLeft = compactAndCount(*record, call.player);
  printNote(namesLeftWords(namesLeft));
  return namesLeft ? 0 : 1;
}

int run(const Call& call) {
  if (call.compact) return compact(call);
  auto record = existing(call.record, call.yes ? RecordMode::ReadWrite : RecordMode::ReadOnly);
  if (!record) return reportError(record.error());
  const auto player = record->playerNamed(call.player);
  if (!player) return reportError(player.error());
  if (!*player) return reportError({ErrorCode::NotFound, call.player, call.record, {}});
  const auto preview = previewErase(*record, (*player)->id);
  if (!preview) return reportError(preview.error());
  for (const EraseSection& section : erasePreviewWords(*preview)) {
    printResult(section.heading + QLatin1Char(':'));
    for (const QString& line : section.lines)
      printResult(QStringLiteral("  ") + line);
  }
  if (!call.yes) {
    printNote(QStringLiteral("Nothing was erased; add --yes to erase."));
    return 0;
  }
  EraseOptions options = call.options;
  options.blankMentions = !call.keepMentions;
  const auto report = erasePlayer(*record, (*player)->id, options, QDateTime::currentMSecsSinceEpoch());
  if (!report) return reportError(report.error());
  for (const QString& line : eraseReportWords(*report))
    printNote(line);
  return report->namesLeft ? 0 : 1;
}

}  // namespace

void addEraseCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("erase", "Erase a player from a record, after listing what goes");
  const auto call = std::make_shared<Call>();
  command->add_option("--record", call->record, "The record")->required();
  command->add_option("--player", call->player, "Who is to be erased")->required();
  command->add_flag("--yes", call->yes, "Erase; without it, only list what would go");
  command->add_flag("--keep-mentions", call->keepMentions, "Leave the name in the texts of others");
  command->add_flag("--delete-films", call->options.deleteFilms,
                    "Delete the files of films in which nobody else plays");
  command->add_flag("--delete-backups", call->options.deleteBackups, "Delete older copies that hold the name");
  command->add_flag("--compact", call->compact, "Erase nothing; write the record anew without what was erased before");
  command->callback([call, &status] { status = run(*call); });
}

}  // namespace ferrule
