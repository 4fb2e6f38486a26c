// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/drills/drill.h"

/// Changes of one station of a drill; each returns the drill as it is then.
namespace ferrule {

/// A ball put down near a place, drawn to spots, cushions and balls within reach; unchanged where there is no room. A
/// ball drawn to a cushion stays frozen to it on every table.
[[nodiscard]] Drill withBall(const Drill& drill, std::size_t station, BallName ball, TablePoint near, double reach_m,
                             const MeasuredTable& measured);
/// A ball taken away; without its cue ball a station has it in hand.
[[nodiscard]] Drill withoutBall(const Drill& drill, std::size_t station, BallName ball);
/// What its first pot is: this ball into this pocket.
[[nodiscard]] Drill withTarget(const Drill& drill, std::size_t station, BallName ball, PocketName pocket);
[[nodiscard]] Drill withZone(const Drill& drill, std::size_t station, const Zone& zone);

/// What the editor offers to ask; Other is kept as it stands.
enum class DrillAsk { Pot, PotAndRest, Rest, ContactAndHide, Clear, Other };

[[nodiscard]] DrillAsk askOf(const DrillStation& station);
/// The goals of every station; ball, pocket and zone stay where there were some.
[[nodiscard]] Drill withAsk(const Drill& drill, DrillAsk ask);

/// The first object ball of a station; nothing where there is none.
[[nodiscard]] std::optional<BallName> firstObjectBall(const DrillStation& station);

}  // namespace ferrule
