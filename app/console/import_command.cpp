// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/import_command.h"

#include <CLI/CLI.hpp>
#include <memory>
#include <string>

#include "app/console/console_output.h"
#include "app/words/merge_sentence.h"

namespace ferrule {

namespace {

struct Call {
  std::string record;
  std::string other;
};

int run(const Call& call) {
  const auto report = mergeRecord(call.record, call.other);
  if (!report) return reportError(report.error());
  printResult(mergeSentences(*report));
  return 0;
}

}  // namespace

void addImportCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("import", "Take another record into this one, without doubles");
  const auto call = std::make_shared<Call>();
  command->add_option("--record", call->record, "The record that takes it in; made where it is not there")->required();
  command->add_option("OTHER", call->other, "The other record, which stays as it is")->required();
  command->callback([call, &status] { status = run(*call); });
}

}  // namespace ferrule
