// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/geometry/frames.h"

namespace ferrule {

/// A straight piece from start to end, m.
struct TableSegment {
  TablePoint start;
  TablePoint end;

  bool operator==(const TableSegment&) const = default;
};

/// Distance from a point to the nearest point of a segment, m.
[[nodiscard]] double distanceToSegment(TablePoint point, const TableSegment& segment);

/// Where the line through origin along direction meets the line through the segment, as (distance along direction in
/// units of its length, share along the segment). Nothing for parallel lines.
struct LineCrossing {
  double along = 0.0;
  double share = 0.0;
};
[[nodiscard]] std::optional<LineCrossing> crossing(TablePoint origin, TableVector direction,
                                                   const TableSegment& segment);

}  // namespace ferrule
