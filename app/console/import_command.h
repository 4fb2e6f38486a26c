// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// "import": takes another record into this one, without doubles.
void addImportCommand(CLI::App& app, int& status);

}  // namespace ferrule
