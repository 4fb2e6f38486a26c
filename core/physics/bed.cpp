// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/physics/bed.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

/// Ball centres this close to a pocket's parts are worth a closer look.
constexpr double kMargin_m = 1e-6;

RailLine lineOf(const TableSegment& segment, TableVector toward, CushionName cushion) {
  const TableVector whole = segment.end - segment.start;
  const TableVector along = unit(whole);
  TableVector inward = perpendicular(along);
  if (dot(inward, toward) < 0.0) inward = -inward;
  return {segment.start, along, inward, length(whole), cushion};
}

/// The cushion one of whose nose's ends is this point.
CushionName cushionEndingAt(TablePoint point, const std::array<Cushion, 6>& all) {
  const auto nearness = [&](const Cushion& c) {
    return std::min(distance(c.nose.start, point), distance(c.nose.end, point));
  };
  return std::ranges::min_element(all, {}, nearness)->name;
}

PocketWell wellOf(const Pocket& pocket, const std::array<Cushion, 6>& all, double reach_m) {
  PocketWell well;
  well.name = pocket.name;
  well.hole = pocket.hole;
  well.holeRadius_m = pocket.holeRadius_m;
  well.inward = pocket.inward;
  well.least = {pocket.hole.x - pocket.holeRadius_m, pocket.hole.y - pocket.holeRadius_m};
  well.most = {pocket.hole.x + pocket.holeRadius_m, pocket.hole.y + pocket.holeRadius_m};
  const auto include = [&](TablePoint p) {
    well.least = {std::min(well.least.x, p.x - reach_m - kMargin_m), std::min(well.least.y, p.y - reach_m - kMargin_m)};
    well.most = {std::max(well.most.x, p.x + reach_m + kMargin_m), std::max(well.most.y, p.y + reach_m + kMargin_m)};
  };
  for (std::size_t i = 0; i < 2; ++i) {
    const TableSegment& facing = pocket.facings[i];
    const CushionName cushion = cushionEndingAt(facing.start, all);
    well.facings[i] = lineOf(facing, pocket.mouth - facing.start, cushion);
    well.jaws[i] = {facing.start, cushion};
    // The pocket's wall goes on in the facing's line to the back of the hole.
    RailLine& wall = well.facings[i];
    wall.length_m = std::max(wall.length_m, dot(pocket.hole - facing.start, wall.along) + pocket.holeRadius_m);
    include(facing.start);
    include(facing.start + wall.length_m * wall.along);
  }
  return well;
}

}  // namespace

Bed bedOf(const Table& table, double ballRadius_m) {
  Bed bed;
  bed.halfLength_m = table.length_m / 2.0;
  bed.halfWidth_m = table.width_m / 2.0;
  bed.noseHeight_m = table.noseHeight_m;
  bed.radius_m = ballRadius_m;
  const double above_m = std::clamp(table.noseHeight_m - ballRadius_m, -0.99 * ballRadius_m, 0.99 * ballRadius_m);
  bed.reach_m = std::sqrt(ballRadius_m * ballRadius_m - above_m * above_m);
  const auto all = cushions(table);
  for (std::size_t i = 0; i < all.size(); ++i)
    bed.noses[i] = lineOf(all[i].nose, all[i].inward, all[i].name);
  const auto openings = pockets(table);
  for (std::size_t i = 0; i < openings.size(); ++i)
    bed.wells[i] = wellOf(openings[i], all, bed.reach_m);
  return bed;
}

bool standsOnBed(const Bed& bed, TablePoint centre, double slack_m) {
  const double overX_m = std::abs(centre.x) - (bed.halfLength_m - bed.reach_m);
  const double overY_m = std::abs(centre.y) - (bed.halfWidth_m - bed.reach_m);
  if (overX_m <= slack_m && overY_m <= slack_m) return true;
  // In a pocket's mouth: between the facings and clear of the jaws.
  for (const PocketWell& well : bed.wells) {
    if (centre.x < well.least.x || centre.x > well.most.x || centre.y < well.least.y || centre.y > well.most.y)
      continue;
    bool clear = distance(centre, well.hole) >= well.holeRadius_m - slack_m;
    for (const RailLine& nose : bed.noses) {
      const TableVector from = centre - nose.start;
      const double share_m = dot(from, nose.along);
      clear = clear && (share_m < 0.0 || share_m > nose.length_m || dot(from, nose.inward) >= bed.reach_m - slack_m);
    }
    for (std::size_t i = 0; i < 2; ++i) {
      clear = clear && distance(centre, well.jaws[i].point) >= bed.reach_m - slack_m;
      const TableVector from = centre - well.facings[i].start;
      clear = clear &&
              (dot(from, well.facings[i].along) < 0.0 || dot(from, well.facings[i].inward) >= bed.reach_m - slack_m);
    }
    if (clear) return true;
  }
  return false;
}

}  // namespace ferrule
