// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace ferrule {

/// A call of the program that opens the window.
struct WindowCall {
  std::string record;  ///< to open; empty: the one that was open last

  bool operator==(const WindowCall&) const = default;
};

/// No argument, one path of a file that is there or ends in .sqlite, or --record PATH, before the toolkit's own options
/// (-platform, -style, ...). Nothing for every other call: that is for the console.
[[nodiscard]] std::optional<WindowCall> windowCallFrom(int argc, const char* const* argv);

/// Whether a window can be shown at all: asked before the toolkit, which would abort.
[[nodiscard]] bool hasDisplay();

}  // namespace ferrule
