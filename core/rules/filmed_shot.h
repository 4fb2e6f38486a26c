// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/rules/shot_events.h"
#include "core/table/table.h"
#include "core/table/track.h"

namespace ferrule {

/// A shot that was read from a film as a referee needs it, with the doubts that its paths leave: two balls met too
/// close together, a ball that came near a cushion without turning, one that moved though none met it, one that is
/// gone without having fallen. What nobody can read from a film (calls, declarations, announcements) is left open.
/// tracks: around the shot, or none; without them the near cushions and balls past the head string are not known.
[[nodiscard]] ShotEvents filmedShot(const ShotReading& reading, std::span<const Track> tracks, const Table& table,
                                    double ballRadius_m);

}  // namespace ferrule
