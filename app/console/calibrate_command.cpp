// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/console/calibrate_command.h"

#include <CLI/CLI.hpp>

namespace ferrule {

void addCalibrateCommand(CLI::App& app, int& status) {
  CLI::App* calibrate = app.add_subcommand(
      "calibrate", "Measure a lens, where a camera sits over a table, or where a projector's light falls");
  calibrate->require_subcommand(1);
  addCalibrateLensCommand(*calibrate, status);
  addCalibrateProjectorCommand(*calibrate, status);
  addCalibrateRigCommand(*calibrate, status);
}

}  // namespace ferrule
