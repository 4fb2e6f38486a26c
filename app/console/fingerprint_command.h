// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace CLI {
class App;
}

namespace ferrule {

/// fingerprint --record R.sqlite --session NAME [-o fingerprint.json]: fits what cloth, cushions and balls were like.
void addFingerprintCommand(CLI::App& app, int& status);

}  // namespace ferrule
