// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/camera/mark_sighting.h"

#include <cmath>

#include "core/base/contract.h"

namespace ferrule {

std::vector<TableMark> tableMarks() {
  std::vector<TableMark> marks;
  const int sightCount = static_cast<int>(sights(Table{}).size());
  for (int i = 0; i < sightCount; ++i)
    marks.push_back({MarkKind::Sight, i});
  for (int i = 0; i < static_cast<int>(kPocketNames.size()); ++i)
    marks.push_back({MarkKind::Pocket, i});
  return marks;
}

MarkPlace markPlace(const Table& table, TableMark mark) {
  const auto number = static_cast<std::size_t>(mark.number);
  if (mark.kind == MarkKind::Pocket) {
    FERRULE_REQUIRE(mark.number >= 0 && number < kPocketNames.size());
    const Pocket pocket = pockets(table)[number];
    return {pocket.hole, perpendicular(pocket.inward)};
  }
  const std::vector<TablePoint> all = sights(table);
  FERRULE_REQUIRE(mark.number >= 0 && number < all.size());
  const TablePoint place = all[number];
  // A sight of a short rail lies beyond the nose's line there.
  const bool onShortRail = std::abs(place.x) > 0.5 * table.length_m;
  return {place, onShortRail ? TableVector{0.0, 1.0} : TableVector{1.0, 0.0}};
}

}  // namespace ferrule
