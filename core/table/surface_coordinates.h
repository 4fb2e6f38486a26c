// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/table/table.h"

namespace ferrule {

/// A place as drills and diagrams give it, in widths of the playing surface from the head right corner: along is 0 at
/// the head cushion's nose and 2 at the foot cushion's, across is 0 at the right long cushion's nose and 1 at the left
/// one's, as seen from the head end. Independent of the table's size.
struct SurfacePlace {
  double along = 0.0;
  double across = 0.0;

  bool operator==(const SurfacePlace&) const = default;
};

/// On a table that is not exactly twice as long as wide, along is counted in half lengths, so that strings, spots and
/// pockets stay at their quarter points.
[[nodiscard]] TablePoint tableFromSurface(const Table& table, SurfacePlace place);
[[nodiscard]] SurfacePlace surfaceFromTable(const Table& table, TablePoint point);

}  // namespace ferrule
