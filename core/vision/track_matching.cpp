// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/track_matching.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

double colourCost(const BallTrack& track, const BallCandidate& candidate) {
  const double best = *std::ranges::max_element(candidate.names);
  double cost = -kLeastLikelihood;
  const double trackBest = *std::ranges::max_element(track.names);
  for (std::size_t i = 0; i < track.names.size(); ++i) {
    const double doubt = std::min(trackBest - track.names[i], 20.0);
    cost = std::min(cost, best - candidate.names[i] + doubt);
  }
  return cost;
}

double matchCost(const BallTrack& track, const BallCandidate& candidate, double time_s, double fastest_mps) {
  const double dt = std::max(time_s - track.lastSeen_s, 1e-3);
  const double way_m = distance(candidate.position, track.predicted(time_s));
  // A streak mixes the ball's colours with the cloth's: they still speak, but softly.
  constexpr double kSoft = 0.3;
  const bool streak = length(candidate.blur) > 0.3 * candidate.outline.radius_px();
  const double colour = (streak ? kSoft : 1.0) * colourCost(track, candidate);
  if (track.state == TrackState::Tentative) {
    if (way_m < 0.02 + 0.5 * length(track.velocity_mps) * dt) return way_m / 0.002 + colour;
    const bool fresh = track.hits < 3 && candidate.alone && way_m < kHighestSpeed_mps * dt;
    return fresh ? 15.0 + way_m / 0.05 + colour : kNeverCost;
  }
  const double hop_m = distance(candidate.position, track.position);
  if (hop_m > kHighestSpeed_mps * dt + 0.02) return kNeverCost;
  if (colour > 18.0) return kNeverCost;
  if (track.state == TrackState::Resting) {
    // Covered for a moment, it may have been struck in that moment. Covered for longer, it lies where it lay until
    // something elsewhere has proved to be it.
    constexpr double kMoment_s = 0.15;
    constexpr double kReluctance = 14.0;
    return candidate.alone && dt < kMoment_s ? kReluctance + colour : kNeverCost;
  }
  const double spread_m = 0.004 + 0.10 * length(track.velocity_mps) * dt;
  const double off = way_m / spread_m;
  // A contact may send it anywhere, at up to about the speed of whatever hit it: far places cost no more than this.
  constexpr double kContact = 12.0;
  const double reachable_mps = std::max(fastest_mps, 1.0);
  const double unreachable = std::max(0.0, hop_m - 1.2 * reachable_mps * dt) / 0.05;
  return std::min(off * off / 2.0, kContact + 0.5 * hop_m / (0.05 + reachable_mps * dt)) + unreachable + colour;
}

}  // namespace ferrule
