// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/special_racking.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

double distanceTo(TablePoint from, TablePoint to, TablePoint place) {
  const TableVector along = to - from;
  const double share = std::clamp(dot(place - from, along) / dot(along, along), 0.0, 1.0);
  return distance(place, from + share * along);
}

}  // namespace

bool inRackArea(const SurfaceLines& lines, TablePoint place) {
  // The head and the foot string lie at the same distance from the centre.
  const double footSpot_m = -lines.headString_m;
  const double radius_m = lines.ballRadius_m;
  // Centres of the corner balls of a tight triangle: four rows of R*sqrt(3) below the apex, four radii to each side.
  const TablePoint apex{footSpot_m, 0.0};
  const TablePoint left{footSpot_m + 4.0 * std::sqrt(3.0) * radius_m, 4.0 * radius_m};
  const TablePoint right{left.x, -left.y};
  const bool inside = cross(left - apex, place - apex) <= 0.0 && cross(right - left, place - left) <= 0.0 &&
                      cross(apex - right, place - right) <= 0.0;
  if (inside) return true;
  // The outline runs one radius outside the centres, and the ball reaches one radius toward it.
  const double nearest =
      std::min({distanceTo(apex, left, place), distanceTo(left, right, place), distanceTo(right, apex, place)});
  return nearest < 2.0 * radius_m;
}

SpecialRacking specialRacking(const SurfaceLines& lines, TablePoint fifteenth, std::optional<TablePoint> cueBall) {
  const TablePoint headSpot{lines.headString_m, 0.0};
  const auto blocksHeadSpot = [&](TablePoint place) { return distance(place, headSpot) < 2.0 * lines.ballRadius_m; };
  const bool cueInRack = cueBall && inRackArea(lines, *cueBall);
  if (inRackArea(lines, fifteenth)) {
    if (cueInRack) return {SpotPlace::FootSpot, CueBallPlace::InHandBehindString};
    const bool blocked = cueBall && blocksHeadSpot(*cueBall);
    return {blocked ? SpotPlace::CentreSpot : SpotPlace::HeadSpot, CueBallPlace::AsItLies};
  }
  if (!cueInRack) return {};
  if (blocksHeadSpot(fifteenth)) return {std::nullopt, CueBallPlace::OnCentreSpot};
  const bool behind = fifteenth.x < lines.headString_m;
  return {std::nullopt, behind ? CueBallPlace::OnHeadSpot : CueBallPlace::InHandBehindString};
}

}  // namespace ferrule
