// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cstddef>
#include <string>

namespace ferrule {

/// "line 3": where a person finds a byte of a text.
[[nodiscard]] inline std::string lineAt(const std::string& text, std::size_t byte) {
  const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(byte, text.size()));
  return "line " + std::to_string(1 + std::count(text.begin(), end, '\n'));
}

}  // namespace ferrule
