// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// ferrule report: one player's progress as PDF or HTML, and the numbers beside it as CSV. Needs a QApplication.
void addReportCommand(CLI::App& app, int& status);

}  // namespace ferrule
