// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace CLI {
class App;
}

namespace ferrule {

/// Adds a command that sets the exit status from its callback.
using AddCommand = void (*)(CLI::App& app, int& status);

/// Runs one command without a window. Results go to standard output or the file of -o, progress to standard error.
/// Returns the exit status: 0 done, 1 could not do it, 2 wrong call. more: commands that need pictures and fonts, which
/// a build without the window has not.
[[nodiscard]] int runConsole(int argc, char** argv, const std::vector<AddCommand>& more = {});

}  // namespace ferrule
