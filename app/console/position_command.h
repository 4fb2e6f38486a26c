// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// position PHOTO --rig rig.json --table table.json [-o position.json]: where the balls lie in a photo of the table.
void addPositionCommand(CLI::App& app, int& status);

}  // namespace ferrule
