// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>

#include "core/progress/make_rate.h"

/// How flat object balls come into their pockets: a pocket shows a ball less room the further its way turns from the
/// pocket's own direction, a side pocket sooner than a corner pocket.
namespace ferrule {

/// The angle between the straight pot's line and the pocket's direction, rad, 0 for straight in, at most 90 degrees.
/// Nothing without an object ball and a pocket.
[[nodiscard]] std::optional<double> entryAngle_rad(const PlayedShot& shot, const PlayedTable& table);

/// Upper ends of the bands, rad: 10, 25, 40 and 90 degrees; a corner pocket's never exceeds 45. Common practice, no
/// source.
inline constexpr std::array<double, 4> kEntryBands_rad{0.1745329252, 0.4363323130, 0.6981317008, 1.5707963268};
[[nodiscard]] std::size_t entryBand(double entry_rad);

/// [0]: corner pockets, [1]: side pockets; attempts of one kind of intent.
using MakesByEntry = std::array<std::array<MakeCell, kEntryBands_rad.size()>, 2>;
[[nodiscard]] MakesByEntry makesByEntry(const PlayerHistory& history, Intent intent);

}  // namespace ferrule
