// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `ferrule suggest POSITION.json [--record R.sqlite --player NAME] [-o OUT.json] [--picture OUT.svg]`.
void addSuggestCommand(CLI::App& app, int& status);

}  // namespace ferrule
