// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `ferrule asked --commands FILE.csv (MEASURED.json | --record R.sqlite --session NAME)`.
void addAskedCommand(CLI::App& app, int& status);

}  // namespace ferrule
