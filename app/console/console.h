// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule {

/// Runs one command without a window. Results go to standard output or the file of -o, progress to standard error.
/// Returns the exit status: 0 done, 1 could not do it, 2 wrong call.
[[nodiscard]] int runConsole(int argc, char** argv);

}  // namespace ferrule
