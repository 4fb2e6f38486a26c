// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `ferrule coach POSITION.json [--record R.sqlite --player NAME] [--level LEVEL] [--walk-to X,Y]`.
void addCoachCommand(CLI::App& app, int& status);

}  // namespace ferrule
