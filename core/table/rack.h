// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/base/random.h"
#include "core/table/ball_set.h"
#include "core/table/table.h"
#include "core/table/track.h"

namespace ferrule {

/// Which balls stand in which form before a break.
enum class RackKind {
  EightBall,     ///< 15 in a triangle, the 8 in the middle of the third row, a solid and a stripe in the rear corners
  NineBall,      ///< diamond of 1 to 9, the 1 at the apex, the 9 in the centre
  TenBall,       ///< triangle of 1 to 10, the 1 at the apex, the 10 in the middle of the third row
  StraightPool,  ///< 15 in a triangle, no order
  StraightPoolRest  ///< 14 in a triangle whose apex is empty
};

/// What the rules leave to the event.
struct RackOptions {
  /// The ball of a diamond that stands on the foot spot: the 9 where true (world rules of 2025), else the 1 (2008 and
  /// 2016, and still allowed).
  bool nineOnFootSpot = false;
  /// The ball that is still on the table and stays out of a StraightPoolRest rack.
  BallName leftOut{15};

  bool operator==(const RackOptions&) const = default;
};

/// The places of a tight rack, apex first, row by row toward the foot, from the left to the right of each row.
/// Neighbouring rows are R*sqrt(3) apart. Of StraightPoolRest the apex is left out. Source: world rules of play, rack
/// diagrams.
[[nodiscard]] std::vector<TablePoint> rackPlaces(RackKind kind, const Table& table, const BallSet& balls,
                                                 const RackOptions& options = {});

/// A rack with its balls, in the order of their names, without the cue ball. Where the rules give no order, the random
/// numbers do.
[[nodiscard]] Position racked(RackKind kind, const Table& table, const BallSet& balls, Random& random,
                              const RackOptions& options = {});

}  // namespace ferrule
