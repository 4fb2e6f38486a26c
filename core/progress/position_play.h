// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/progress/played_shot.h"
#include "core/progress/sample.h"

/// Where the cue ball was left for the next ball, against what was planned.
namespace ferrule {

/// Whether the cue ball came to rest on the other side of the next ball's line than was meant.
///
/// The next ball is the one that the taken plan goes on with; its line runs from where it lay after the shot to the
/// middle of the mouth that asks the least cut of it from the place that was meant. The side is the cut's: a ball that
/// was to be cut to the left and must now be cut to the right was left on the wrong side. Other balls are not heeded.
/// Nothing where the pot was missed or fouled, where place or next ball are unknown, or where a cut below kStraight_rad
/// was meant, which has no side; a rest on the line itself (below kStraight_rad) is not wrong.
[[nodiscard]] std::optional<bool> isOnWrongSide(const PlayedShot& shot, const PlayedTable& table);

/// A cue ball that goes another way than was meant is neither long nor short. 30 degrees: common practice, no source.
inline constexpr double kSameWay_rad = 0.5235987756;

/// How much farther from the contact the cue ball came to rest than was meant, m, + long, - short:
///   |rest - contact| - |meant - contact|,  the contact at the ghost ball of the pot
/// Off a cushion the cue ball comes back, and nearer may be longer: nothing where it met one, where that is not known,
/// or where the place that was meant does not lie the same way from the contact (kSameWay_rad), as behind a cushion.
/// Nothing without pot, rest or place that was meant. A plan that comes straight back off a cushion is not told from
/// one that stops before it.
[[nodiscard]] std::optional<double> longBy_m(const PlayedShot& shot, const PlayedTable& table);

struct PositionPlay {
  int told = 0;                                                  ///< pots made of which the side can be told
  Answer<Estimate> wrongSide = shortOf(ShortageKind::NoValues);  ///< of these
  Answer<Estimate> lossRight = shortOf(ShortageKind::NoValues);  ///< mean delivery loss where the side was right
  Answer<Estimate> lossWrong = shortOf(ShortageKind::NoValues);  ///< and where it was wrong
  Answer<Estimate> longBy_m = shortOf(ShortageKind::NoValues);   ///< mean, + long
  Answer<Estimate> lossInAll = shortOf(ShortageKind::NoValues);  ///< mean delivery loss of pots that fell
};
[[nodiscard]] PositionPlay positionPlay(const PlayerHistory& history, const Resampling& resampling);

}  // namespace ferrule
