// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `export`: a record into JSON and CSV. status becomes the command's exit status.
void addExportCommand(CLI::App& app, int& status);

}  // namespace ferrule
