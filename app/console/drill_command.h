// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// drill --record R.sqlite --session NAME --drill KEY: counts the tries at a drill among a session's shots and keeps
/// them as a run. drill --list [--record R.sqlite]: the keys there are.
void addDrillCommand(CLI::App& app, int& status);

}  // namespace ferrule
