// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/camera/mark_sighting.h"

namespace ferrule {

/// A mark by its rail, counted as a person at the head counts: "sight 2 of 6 on the left rail, from the head", "sight 1
/// of 3 on the foot rail, from the left", "the foot-right pocket". To stand within a sentence.
[[nodiscard]] QString markWords(TableMark mark);

}  // namespace ferrule
