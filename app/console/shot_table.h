// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <vector>

#include "core/table/shot.h"

namespace ferrule {

/// Shots as lines of an aligned table with a header, for a terminal. A value stands with its 95 % interval as
/// value +- 2 u; a dash stands for what was not observed.
[[nodiscard]] QStringList shotTable(const std::vector<ShotReading>& shots);

}  // namespace ferrule
