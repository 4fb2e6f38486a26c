// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/table/table.h"
#include "core/table/track.h"

namespace ferrule {

/// What a ball was drawn to.
enum class SnapKind {
  None,
  Spot,     ///< on the head, centre or foot spot
  Cushion,  ///< frozen to one cushion, or to two in a corner
  Ball,     ///< frozen to another ball
};

/// Where a ball comes to lie that a person puts down.
struct Snapped {
  TablePoint place;
  SnapKind kind = SnapKind::None;

  bool operator==(const Snapped&) const = default;
};

/// The place for a ball that a person puts down near a point: on the playing surface, over no other ball, and drawn to
/// a spot, a cushion or a ball within reach of it. A spot goes before a ball, a ball before a cushion.
///
/// others: all other balls. wanted: any point, off the table too. reach_m: from the place it would have otherwise; 0
/// draws to nothing. Nothing when the balls around leave no room near the point.
[[nodiscard]] std::optional<Snapped> snapped(const Table& table, double radius_m, const Position& others,
                                             TablePoint wanted, double reach_m);

}  // namespace ferrule
