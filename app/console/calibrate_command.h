// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `calibrate lens`, `calibrate projector` and `calibrate rig`. status becomes the command's exit status.
void addCalibrateCommand(CLI::App& app, int& status);

void addCalibrateLensCommand(CLI::App& calibrate, int& status);
void addCalibrateProjectorCommand(CLI::App& calibrate, int& status);
void addCalibrateRigCommand(CLI::App& calibrate, int& status);

}  // namespace ferrule
