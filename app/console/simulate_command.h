// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `simulate`: plays one strike from a position file. status becomes the command's exit status.
void addSimulateCommand(CLI::App& app, int& status);

}  // namespace ferrule
