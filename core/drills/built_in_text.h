// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ferrule {

/// resources/drills/drills.json as it was when the program was built.
[[nodiscard]] std::string builtInText();

}  // namespace ferrule
