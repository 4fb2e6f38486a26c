// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <vector>

#include "core/camera/check_evidence.h"
#include "tests/camera/camera_support.h"

namespace ferrule::testing {

inline constexpr double kNoise_px = 0.12;

/// A line of a table as a rig sees it, offset_m inward of its place, with noise.
inline LineTrace traceOf(const Rig& rig, const Table& table, const Cushion& cushion, LineTrace::Kind kind,
                         double offset_m, Random& random) {
  LineTrace trace;
  trace.kind = kind;
  trace.cushion = cushion.name;
  trace.u_px = kNoise_px;
  const double behind_m = kind == LineTrace::Kind::Back ? table.cushionWidth_m : 0.0;
  constexpr int kPlaces = 24;
  for (int i = 0; i < kPlaces; ++i) {
    const double share = 0.06 + 0.88 * i / (kPlaces - 1);
    const TablePoint p =
        cushion.nose.start + share * (cushion.nose.end - cushion.nose.start) + (offset_m - behind_m) * cushion.inward;
    const auto pixel = imageFromTable(rig, {p.x, p.y, table.noseHeight_m});
    if (pixel) trace.places.push_back({pixel->x + kNoise_px * random.normal(), pixel->y + kNoise_px * random.normal()});
  }
  return trace;
}

/// Sights as a rig sees them: each drilled a little off, their rails bolted on a little off, all a little high.
inline std::vector<MarkSighting> sightsOf(const Rig& rig, const Table& table, Random& random) {
  const double higher_m = 0.004 * random.normal();
  const double behind_m = 0.0015 * random.normal();
  std::vector<MarkSighting> seen;
  double rail_m = 0.0;
  for (const TableMark& mark : tableMarks()) {
    if (mark.kind != MarkKind::Sight) continue;
    // Three sights to a rail, one after the other.
    if (mark.number % 3 == 0) rail_m = 0.0008 * random.normal();
    const MarkPlace at = markPlace(table, mark);
    const bool onShortRail = at.sure.x == 0.0;
    const TableVector outward{onShortRail ? std::copysign(1.0, at.place.x) : 0.0,
                              onShortRail ? 0.0 : std::copysign(1.0, at.place.y)};
    const TablePoint p =
        at.place + (rail_m + 0.0006 * random.normal()) * at.sure + (behind_m + 0.0008 * random.normal()) * outward;
    const auto pixel = imageFromTable(rig, {p.x, p.y, table.noseHeight_m + higher_m});
    if (!pixel) continue;
    seen.push_back({mark, {pixel->x + kNoise_px * random.normal(), pixel->y + kNoise_px * random.normal()}, kNoise_px});
  }
  return seen;
}

}  // namespace ferrule::testing
