// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/table/surface_coordinates.h"

namespace ferrule {

/// A part of the playing surface: every place within reach of what its corners span. One corner makes a circle, two a
/// strip with round ends, three or more a convex shape (in their order around it).
struct Zone {
  std::vector<SurfacePlace> corners;
  double reach_widths = 0.0;

  bool operator==(const Zone&) const = default;
};

/// Along and across from least to most.
[[nodiscard]] Zone rectangleZone(SurfacePlace least, SurfacePlace most);

/// The corners on a table, m.
[[nodiscard]] std::vector<TablePoint> cornersOf(const Zone& zone, const Table& table);
/// How far a place lies outside, m; 0 within. The zone has at least one corner.
[[nodiscard]] double distanceFrom_m(const Zone& zone, const Table& table, TablePoint place);
/// The mean of the corners.
[[nodiscard]] TablePoint middleOf(const Zone& zone, const Table& table);

}  // namespace ferrule
