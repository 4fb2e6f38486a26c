// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `erase`: takes a player out of a record, after saying what goes. status becomes the command's exit
/// status.
void addEraseCommand(CLI::App& app, int& status);

}  // namespace ferrule
