// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/progress/played_shot.h"
#include "core/record/record.h"
#include "core/record/recorded_shot.h"

namespace ferrule {

/// One player's shots of a period, as the measures of core/progress take them. A session whose kind nobody
/// gave is taken for a practice with one player and for a match with several. Minutes count from the player's first
/// shot of the session and need a film with a clock, or a session of one film. Sessions without a shot of the player
/// are left out. Errors: NotFound (subject: the player; detail: the record), those of Record.
[[nodiscard]] Result<PlayerHistory> playerHistory(Record& record, const std::string& player,
                                                  const SessionPeriod& period);

}  // namespace ferrule
