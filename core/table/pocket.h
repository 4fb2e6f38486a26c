// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/geometry/frames.h"
#include "core/geometry/intersections.h"

namespace ferrule {

/// Left as seen looking from the head to the foot.
enum class PocketName { HeadLeft, HeadRight, SideLeft, SideRight, FootLeft, FootRight };

inline constexpr std::array kPocketNames{PocketName::HeadLeft,  PocketName::HeadRight, PocketName::SideLeft,
                                         PocketName::SideRight, PocketName::FootLeft,  PocketName::FootRight};

[[nodiscard]] std::string_view toText(PocketName pocket);
[[nodiscard]] std::optional<PocketName> pocketFromText(std::string_view text);
[[nodiscard]] bool isSidePocket(PocketName pocket);

/// How a kind of pocket is cut.
struct PocketShape {
  double mouth_m = 0.0;       ///< nose point to nose point
  double cutAngle_rad = 0.0;  ///< inside angle between the nose line and the facing, seen from above
  double shelf_m = 0.0;       ///< from the middle of the mouth to the edge of the slate
  double holeRadius_m = 0.0;  ///< of the opening a ball falls through

  bool operator==(const PocketShape&) const = default;
};

/// Mouth 114.3 to 117.5 mm, cut 142 +- 1 degrees. Source: world equipment specification, pockets. Shelf 25.4 to 57.2
/// mm: the same specification, from memory. Hole radius: common practice, no source.
[[nodiscard]] PocketShape cornerPocketShape();
/// Mouth 127.0 to 130.2 mm, cut 104 +- 1 degrees. Source: world equipment specification, pockets. Shelf 0 to 9.5 mm:
/// the same specification, from memory. Hole radius: common practice, no source.
[[nodiscard]] PocketShape sidePocketShape();

/// One pocket of one table.
struct Pocket {
  PocketName name = PocketName::HeadLeft;
  TablePoint mouth;    ///< middle between the two nose points
  TableVector inward;  ///< unit vector from the mouth into the pocket
  double mouth_m = 0.0;
  TablePoint hole;  ///< centre of the opening
  double holeRadius_m = 0.0;
  std::array<TableSegment, 2> facings;  ///< from the nose point into the pocket; right one first, looking inward

  bool operator==(const Pocket&) const = default;
};

}  // namespace ferrule
