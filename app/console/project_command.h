// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// `ferrule project --projector P.json POSITION.json -o picture.png`, or `ferrule project --grid WIDTHxHEIGHT
/// --grid-file grid.json -o grid.png`.
void addProjectCommand(CLI::App& app, int& status);

}  // namespace ferrule
