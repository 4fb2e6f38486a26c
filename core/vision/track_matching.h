// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/vision/ball_track.h"

namespace ferrule {

inline constexpr double kHighestSpeed_mps = 14.0;  ///< an extreme break is 16 m/s; nothing else comes near
inline constexpr double kNeverCost = 1e6;          ///< of a match that cannot be

/// How badly what a candidate shows fits the track's own likeliest names, log-likelihood; 0 is a perfect fit.
[[nodiscard]] double colourCost(const BallTrack& track, const BallCandidate& candidate);

/// What a ball can do in one image at most.
struct MatchLimits {
  double fastest_mps = kHighestSpeed_mps;  ///< of any ball on the table; no ball that another one hits becomes faster
  double exposure_s = 0.0;                 ///< no streak is longer than a ball's way in it
};

/// The price of taking the candidate for the track at time_s, about minus a log-likelihood.
[[nodiscard]] double matchCost(const BallTrack& track, const BallCandidate& candidate, double time_s,
                               const MatchLimits& limits);

}  // namespace ferrule
