// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/reading/knots.h"
#include "core/table/table.h"

namespace ferrule {

/// Something a ball rebounds from: a cushion's nose line, or a jaw, which counts as part of its cushion.
struct RailFace {
  CushionName cushion = CushionName::Head;
  TableSegment line;
  TableVector inward;  ///< unit vector from the line to the side the ball is on
};

/// The six cushions and the twelve jaws of a table.
[[nodiscard]] std::vector<RailFace> railFaces(const Table& table);

/// The cushion that a jump of velocity was a rebound from, when it was one: the ball's centre lay within its radius of
/// a face, it came toward the face and was thrown back from it. jump: the part of the knot's jump to be explained.
[[nodiscard]] std::optional<CushionName> cushionOf(const std::vector<RailFace>& faces, const Knot& knot,
                                                   TableVector jump, double radius_m);

}  // namespace ferrule
