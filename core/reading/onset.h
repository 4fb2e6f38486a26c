// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/reading/measured_path.h"

namespace ferrule {

enum class Onset {
  Waiting,  ///< too little seen yet
  Struck,   ///< at full speed from the first moment, as only a blow does it
  Pushed,   ///< gathered speed, or hardly moved: a hand, a sleeve, noise
};

struct OnsetJudgement {
  Onset onset = Onset::Waiting;
  double start_s = 0.0;    ///< when it left its place, by the path's first points drawn backward
  double speed_mps = 0.0;  ///< at first
};

/// Judges how a ball left the place where it lay still.
///
/// A tip is on the ball for 1 to 2 ms, and after it no force can make the ball more than 7 % faster (a full follow
/// stroke: v = 5/7 v0 + 2/7 of 1.25 v0); a hand takes a tenth of a second and more to gather speed. Source: reference
/// sheet on motion, sliding to rolling and the strike.
///
/// place: where it lay. lastAtPlace_s: when it was last measured there. departure: the points since then.
[[nodiscard]] OnsetJudgement judgeOnset(const RestingPlace& place, double lastAtPlace_s,
                                        std::span<const PathPoint> departure, double imageInterval_s);

}  // namespace ferrule
