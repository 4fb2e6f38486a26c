// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// ferrule check: exit status 0 when everything fits, 1 when a fault is named or the film cannot be checked.
void addCheckCommand(CLI::App& app, int& status);

}  // namespace ferrule
