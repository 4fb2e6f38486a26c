// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/surface_coordinates.h"

namespace ferrule {

TablePoint tableFromSurface(const Table& table, SurfacePlace place) {
  return {(place.along - 1.0) * table.length_m / 2.0, (place.across - 0.5) * table.width_m};
}

SurfacePlace surfaceFromTable(const Table& table, TablePoint point) {
  return {1.0 + 2.0 * point.x / table.length_m, 0.5 + point.y / table.width_m};
}

}  // namespace ferrule
