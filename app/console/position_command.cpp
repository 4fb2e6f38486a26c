// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/position_command.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "app/console/console_output.h"
#include "app/console/interrupt.h"
#include "core/base/text_file.h"
#include "core/measure/photo_position.h"
#include "core/physics/position_file.h"

namespace ferrule {

namespace {

struct Call {
  PhotoFiles files;
  std::string output;
};

Result<void> locate(const Call& call) {
  const Interrupt interrupt;
  JobControl job = consoleJob();
  job.stop = interrupt.token();
  const auto found = positionInPhoto(call.files, job);
  if (!found) return tl::make_unexpected(found.error());
  const std::string text = positionFileText(found->table, found->balls);
  printNote(counted(static_cast<int>(found->balls.size()), "ball"));
  if (!call.output.empty()) return writeTextFile(call.output, text);
  printResult(QString::fromStdString(text).trimmed());
  return {};
}

}  // namespace

void addPositionCommand(CLI::App& app, int& status) {
  CLI::App* command = app.add_subcommand("position", "Find the balls in a photo, for suggest and simulate");
  const auto call = std::make_shared<Call>();
  command
      ->add_option("photo", call->files.photo, "A picture that the table's camera took, or a film that begins with it")
      ->required();
  command->add_option("--rig", call->files.rig, "The rig file")->required();
  command->add_option("--table", call->files.table, "table.json, or a preset's name")->required();
  command->add_option("-o,--output", call->output, "Write the position here instead of standard output");
  command->callback([call, &status] {
    const auto done = locate(*call);
    status = done ? 0 : reportError(done.error());
  });
}

}  // namespace ferrule
