// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/rules/ruling.h"

namespace ferrule {

/// Where the fifteenth ball and the cue ball go when 14 balls are racked again.
struct SpecialRacking {
  std::optional<SpotPlace> fifteenth;  ///< nothing: it stays where it lies
  CueBallPlace cueBall = CueBallPlace::AsItLies;

  bool operator==(const SpecialRacking&) const = default;
};

/// Straight pool, before 14 balls are racked again.
/// fifteenth: where the last object ball lies. cueBall: where the cue ball lies; nothing when it is in hand anyway.
/// A ball is in the rack's area when it reaches into the outline of a tight rack with its apex on the foot spot.
/// Source: world rules of play, 4.8.
[[nodiscard]] SpecialRacking specialRacking(const SurfaceLines& lines, TablePoint fifteenth,
                                            std::optional<TablePoint> cueBall);

/// Whether a ball lying there reaches into the outline of the rack.
[[nodiscard]] bool inRackArea(const SurfaceLines& lines, TablePoint place);

}  // namespace ferrule
