// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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

}  // namespace ferrule::testing
