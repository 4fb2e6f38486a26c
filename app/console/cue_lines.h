// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "core/cue/cue_reading.h"

namespace ferrule {

/// What a shot's cue was like, and what stood in the way of reading it, with the cure; for a terminal. A value stands
/// with its 95 % interval as value +- 2 u.
[[nodiscard]] QStringList cueLines(int shot, const CueReading& reading);

}  // namespace ferrule
