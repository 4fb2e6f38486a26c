// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `ferrule judge --record R.sqlite --session NAME [--level LEVEL] [--again]`.
void addJudgeCommand(CLI::App& app, int& status);

}  // namespace ferrule
