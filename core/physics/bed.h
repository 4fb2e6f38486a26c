// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/table/table.h"

namespace ferrule {

/// A straight edge that a ball can meet: a cushion's nose or a pocket's facing.
struct RailLine {
  TablePoint start;
  TableVector along;   ///< unit
  TableVector inward;  ///< unit, toward where the ball is
  double length_m = 0.0;
  CushionName cushion = CushionName::Head;
};

/// Where a nose ends and a facing begins: met as an arc of the ball's own reach.
struct JawPoint {
  TablePoint point;
  CushionName cushion = CushionName::Head;
};

/// What a ball can meet in and around one pocket.
struct PocketWell {
  PocketName name = PocketName::HeadLeft;
  TablePoint hole;
  double holeRadius_m = 0.0;
  TableVector inward;
  std::array<RailLine, 2> facings;
  std::array<JawPoint, 2> jaws;
  TablePoint least;  ///< corner of the box outside which nothing of this pocket is met by a ball's centre
  TablePoint most;
};

/// One table, prepared for balls of one size.
struct Bed {
  double halfLength_m = 0.0;
  double halfWidth_m = 0.0;
  double noseHeight_m = 0.0;
  double radius_m = 0.0;
  /// Distance from a nose at which a ball on the cloth touches it: R cos Θ with sin Θ = nose height / R − 1.
  double reach_m = 0.0;
  std::array<RailLine, 6> noses;    ///< in the order of kCushionNames
  std::array<PocketWell, 6> wells;  ///< in the order of kPocketNames
};

[[nodiscard]] Bed bedOf(const Table& table, double ballRadius_m);

/// Whether a ball on the cloth may stand here: not more than slack_m inside a cushion, and not in a pocket's hole.
[[nodiscard]] bool standsOnBed(const Bed& bed, TablePoint centre, double slack_m);

}  // namespace ferrule
