// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/console.h"

#include <CLI/CLI.hpp>
#include <string>

#include "app/console/asked_command.h"
#include "app/console/calibrate_command.h"
#include "app/console/check_command.h"
#include "app/console/coach_command.h"
#include "app/console/console_output.h"
#include "app/console/drill_command.h"
#include "app/console/erase_command.h"
#include "app/console/export_command.h"
#include "app/console/fingerprint_command.h"
#include "app/console/import_command.h"
#include "app/console/judge_command.h"
#include "app/console/measure_command.h"
#include "app/console/position_command.h"
#include "app/console/project_command.h"
#include "app/console/simulate_command.h"
#include "app/console/suggest_command.h"

namespace ferrule {

int runConsole(int argc, char** argv, const std::vector<AddCommand>& more) {
  CLI::App app{"Ferrule measures cue-sports film into shots.", "ferrule"};
  app.require_subcommand(1);
  // Each command sets the exit status from its callback; one line per command.
  int status = 0;
  addAskedCommand(app, status);
  addCalibrateCommand(app, status);
  addCheckCommand(app, status);
  addCoachCommand(app, status);
  addDrillCommand(app, status);
  addEraseCommand(app, status);
  addExportCommand(app, status);
  addFingerprintCommand(app, status);
  addImportCommand(app, status);
  addJudgeCommand(app, status);
  addMeasureCommand(app, status);
  addPositionCommand(app, status);
  addProjectCommand(app, status);
  addSimulateCommand(app, status);
  addSuggestCommand(app, status);
  for (const AddCommand add : more)
    add(app, status);
  const std::string command = argc > 1 ? argv[1] : "";
  if (!command.empty() && command.front() != '-' &&
      app.get_subcommands([&](CLI::App* known) { return known->check_name(command); }).empty()) {
    printNote(QStringLiteral("There is no command %1; ferrule --help lists those there are.")
                  .arg(QString::fromLocal8Bit(argv[1])));
    return 2;
  }
  try {
    app.parse(argc, argv);
  } catch (const CLI::CallForHelp& help) {
    return app.exit(help);
  } catch (const CLI::ParseError& error) {
    app.exit(error);
    return 2;
  }
  return status;
}

}  // namespace ferrule
