// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <vector>

#include "core/table/cushion.h"
#include "core/table/pocket.h"
#include "core/table/table_size.h"

namespace ferrule {

/// One table as measured or as specified. Everything that is drawn, simulated or looked for comes from here.
struct Table {
  double length_m = 2.540;  ///< nose to nose along x
  double width_m = 1.270;   ///< nose to nose along y
  PocketShape corner = cornerPocketShape();
  PocketShape side = sidePocketShape();
  /// Nose above the cloth: 63.5 +- 1 % of the ball's diameter. Source: world equipment specification, cushions.
  double noseHeight_m = 0.03629;
  /// Cloth-covered width of the cushion, 47.6 to 50.8 mm. Source: world equipment specification, rails.
  double cushionWidth_m = 0.0500;
  /// Rail with its cushion, 101.6 to 190.5 mm. Source: world equipment specification, rails.
  double railWidth_m = 0.1600;
  /// Centre of a sight behind the nose, 93.66 +- 3.175 mm. Source: world equipment specification, sights.
  double sightOffset_m = 0.09366;

  bool operator==(const Table&) const = default;
};

[[nodiscard]] Table tableOfSize(const TableSize& size);

/// In the order of kPocketNames.
[[nodiscard]] std::array<Pocket, 6> pockets(const Table& table);
/// In the order of kCushionNames.
[[nodiscard]] std::array<Cushion, 6> cushions(const Table& table);
/// The 18 sights, counter-clockwise from the head end of the right rail. Every eighth of the length and every quarter
/// of the width, without the pockets. Source: world rules, definitions, strings and sights.
[[nodiscard]] std::vector<TablePoint> sights(const Table& table);

/// Spots and strings at the quarter points. Source: world rules, definitions.
[[nodiscard]] TablePoint headSpot(const Table& table);
[[nodiscard]] TablePoint centreSpot(const Table& table);
[[nodiscard]] TablePoint footSpot(const Table& table);
/// x of the head string; a ball is behind it when its centre has a smaller x.
[[nodiscard]] double headString_m(const Table& table);
[[nodiscard]] double footString_m(const Table& table);

/// Whether a point of the cloth lies on the playing surface (nose to nose, the pockets not cut out).
[[nodiscard]] bool onPlayingSurface(const Table& table, TablePoint point);

}  // namespace ferrule
