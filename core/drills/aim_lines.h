// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/drills/drill.h"
#include "core/progress/played_shot.h"

namespace ferrule {

/// How a station's first goal is played as geometry has it: without throw and spin, cushions like mirrors.
struct AimLines {
  std::vector<TablePoint> cueBall;     ///< centres, from the start over the cushions to the contact
  std::vector<TablePoint> objectBall;  ///< from its start over the cushions to the pocket's mouth; empty without a pot
  std::optional<TablePoint> ghost;     ///< the cue ball's centre at the contact
  std::optional<double> cut_rad;       ///< unsigned; of a pot
  std::optional<CutSide> cutSide;      ///< of a pot that is not straight

  bool operator==(const AimLines&) const = default;
};

/// Of a set-up with its cue ball in place; nothing where the first goal names no ball that stands there, or the cue
/// ball is in hand.
[[nodiscard]] std::optional<AimLines> aimLines(const DrillStation& station, const MeasuredTable& measured);

/// The way from one centre to another over cushions in their order, as centres; the corners of an unfolded straight
/// line. Source: common practice, no source (mirror images).
[[nodiscard]] std::vector<TablePoint> mirroredWay(TablePoint from, TablePoint to,
                                                  const std::vector<CushionName>& cushions,
                                                  const MeasuredTable& measured);

}  // namespace ferrule
