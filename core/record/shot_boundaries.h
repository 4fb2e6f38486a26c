// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/record/record_impl.h"
#include "core/table/told_values.h"

/// Where one shot of a frame ends and the next begins, and what was put down between them, as people correct it. A shot
/// that became a part of another one is put aside: its number is negative, every list and statistic leaves it out, and
/// all that hangs on it waits there for the day when somebody takes the correction back.
namespace ferrule {

/// One shot again of two that were split; the second must have no corrections of its own left.
[[nodiscard]] Result<void> undoSplit(Connection& connection, std::int64_t shot, const ShotBoundary& boundary);
/// Two shots again of two that were joined.
[[nodiscard]] Result<void> undoJoin(Connection& connection, std::int64_t shot, const ShotBoundary& boundary);

/// Changes, adds (no before) or removes (no after) a placement of the shot's frame; texts: told_values.h. Errors:
/// NotFound for one that is not there, RecordBroken for a text that is none.
[[nodiscard]] Result<void> replacePlacement(Connection& connection, std::int64_t shot,
                                            const std::optional<std::string>& before,
                                            const std::optional<std::string>& after);

}  // namespace ferrule
