// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vision/ball_track.h"

namespace ferrule {

inline constexpr double kHighestSpeed_mps = 14.0;  ///< an extreme break is 16 m/s; nothing else comes near
inline constexpr double kNeverCost = 1e6;          ///< of a match that cannot be

/// How badly what a candidate shows fits the track's own likeliest names, log-likelihood; 0 is a perfect fit.
[[nodiscard]] double colourCost(const BallTrack& track, const BallCandidate& candidate);

/// The price of taking the candidate for the track at time_s, about minus a log-likelihood.
/// fastest_mps: of any ball on the table; a contact may send the track anywhere at up to about that speed.
[[nodiscard]] double matchCost(const BallTrack& track, const BallCandidate& candidate, double time_s,
                               double fastest_mps);

}  // namespace ferrule
