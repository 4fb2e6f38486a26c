// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `measure`: a film into measured.json and the record. status becomes the command's exit status.
void addMeasureCommand(CLI::App& app, int& status);

}  // namespace ferrule
