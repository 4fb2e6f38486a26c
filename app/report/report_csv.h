// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/progress/player_progress.h"

namespace ferrule {

/// Every number of a report, one a row (RFC 4180, UTF-8): measure, group, unit, value, least, most, count, sessions,
/// reason. Angles in degrees, shares in percent; a number that is not there is empty and has its reason ("shots 9 of
/// 20"). The same in every locale.
[[nodiscard]] std::string reportCsv(const PlayerProgress& progress);

}  // namespace ferrule
