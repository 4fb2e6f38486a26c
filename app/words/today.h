// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ferrule {

/// The day on this computer's clock as files keep it: "2026-03-31", whatever the language.
[[nodiscard]] std::string today();

}  // namespace ferrule
