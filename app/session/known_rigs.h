// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "app/setup/rig_in_use.h"

namespace ferrule {

/// The rigs that a session may be measured with: the one in use first, then those that sessions were measured with,
/// latest first. Files that are gone are left out.
[[nodiscard]] std::vector<RigInUse> knownRigs();
/// A session is measured with it.
void rememberRig(const RigInUse& rig);

}  // namespace ferrule
