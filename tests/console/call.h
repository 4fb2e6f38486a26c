// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace ferrule {

/// Calls a command within this process, as main would with these words after the program's name; the exit status.
[[nodiscard]] int call(std::vector<std::string> words);

}  // namespace ferrule
