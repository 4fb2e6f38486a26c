// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geometry/intersections.h"

#include <algorithm>

namespace ferrule {

double distanceToSegment(TablePoint point, const TableSegment& segment) {
  const TableVector along = segment.end - segment.start;
  const double squared = dot(along, along);
  if (squared == 0.0) return distance(point, segment.start);
  const double share = std::clamp(dot(point - segment.start, along) / squared, 0.0, 1.0);
  return distance(point, segment.start + share * along);
}

std::optional<LineCrossing> crossing(TablePoint origin, TableVector direction, const TableSegment& segment) {
  const TableVector along = segment.end - segment.start;
  const double determinant = cross(direction, along);
  if (determinant == 0.0) return std::nullopt;
  const TableVector between = segment.start - origin;
  return LineCrossing{cross(between, along) / determinant, cross(between, direction) / determinant};
}

}  // namespace ferrule
