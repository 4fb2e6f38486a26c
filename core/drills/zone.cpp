// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/zone.h"

#include <algorithm>
#include <limits>

#include "core/base/contract.h"
#include "core/geometry/intersections.h"

namespace ferrule {

namespace {

/// Of a convex shape: on one side of every edge.
bool isInside(const std::vector<TablePoint>& corners, TablePoint place) {
  bool left = false;
  bool right = false;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const TablePoint next = corners[(i + 1) % corners.size()];
    const double side = cross(next - corners[i], place - corners[i]);
    left = left || side > 0.0;
    right = right || side < 0.0;
  }
  return !(left && right);
}

}  // namespace

Zone rectangleZone(SurfacePlace least, SurfacePlace most) {
  return {{least, {most.along, least.across}, most, {least.along, most.across}}, 0.0};
}

std::vector<TablePoint> cornersOf(const Zone& zone, const Table& table) {
  std::vector<TablePoint> corners;
  for (const SurfacePlace corner : zone.corners)
    corners.push_back(tableFromSurface(table, corner));
  return corners;
}

double distanceFrom_m(const Zone& zone, const Table& table, TablePoint place) {
  FERRULE_REQUIRE(!zone.corners.empty());
  const std::vector<TablePoint> corners = cornersOf(zone, table);
  if (corners.size() > 2 && isInside(corners, place)) return 0.0;
  double nearest_m = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const TableSegment edge{corners[i], corners[(i + 1) % corners.size()]};
    nearest_m = std::min(nearest_m, distanceToSegment(place, edge));
  }
  return std::max(0.0, nearest_m - zone.reach_widths * table.width_m);
}

TablePoint middleOf(const Zone& zone, const Table& table) {
  FERRULE_REQUIRE(!zone.corners.empty());
  TableVector sum;
  const std::vector<TablePoint> corners = cornersOf(zone, table);
  for (const TablePoint corner : corners)
    sum = sum + (corner - TablePoint{});
  return TablePoint{} + sum / static_cast<double>(corners.size());
}

}  // namespace ferrule
