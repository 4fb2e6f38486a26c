// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/table/pocket.h"

namespace ferrule {

/// The angle between the line from a ball to the middle of a pocket's mouth and the pocket's own direction, rad: 0
/// straight in. from: not the middle of the mouth itself.
[[nodiscard]] double pocketEntry_rad(const Pocket& pocket, TablePoint from);

}  // namespace ferrule
