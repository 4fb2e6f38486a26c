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

namespace {

/// Whether a streak is longer than any ball's can be: something long, such as a finger or a sleeve. radius_m comes from
/// the outline: what it is in the picture and on the table.
bool isNoBallsStreak(const BallCandidate& candidate, const MatchLimits& limits) {
  constexpr double kMore = 1.5;  // speeds and streaks are measured no better
  constexpr double kBlur = 0.6;  // of the radius: what a shadow beside a ball adds to its blob
  if (limits.exposure_s <= 0.0) return false;
  const double streak_m = length(candidate.outline.tableVector(candidate.blur));
  const double radius_m =
      candidate.outline.radius_px() * std::sqrt(std::abs(candidate.outline.tableFromImage.determinant()));
  return streak_m > kMore * limits.fastest_mps * limits.exposure_s + kBlur * radius_m;
}

/// How much of a candidate's colours is its own: a streak mixes them with the cloth's, by its length over the ball's.
double ownColour(const BallCandidate& candidate) {
  const double diameter_px = 2.0 * candidate.outline.radius_px();
  return diameter_px / (diameter_px + length(candidate.blur));
}

}  // namespace

double matchCost(const BallTrack& track, const BallCandidate& candidate, double time_s, const MatchLimits& limits) {
  const double dt = std::max(time_s - track.lastSeen_s, 1e-3);
  const double way_m = distance(candidate.position, track.predicted(time_s));
  const double colour = ownColour(candidate) * colourCost(track, candidate);
  if (track.state == TrackState::Tentative) {
    if (way_m < 0.02 + 0.5 * length(track.velocity_mps) * dt) return way_m / 0.002 + colour;
    const bool fresh = track.hits < 3 && candidate.alone && way_m < kHighestSpeed_mps * dt;
    return fresh ? 15.0 + way_m / 0.05 + colour : kNeverCost;
  }
  const double hop_m = distance(candidate.position, track.position);
  const double reachable_mps = std::max(limits.fastest_mps, 1.0);
  constexpr double kMore = 1.3;      // a speed is known no better just after a contact
  constexpr double kPlace_m = 0.03;  // nor is a place where something covers the ball
  if (hop_m > std::min(kMore * reachable_mps, kHighestSpeed_mps) * dt + kPlace_m) return kNeverCost;
  if (colour > 18.0 || isNoBallsStreak(candidate, limits)) return kNeverCost;
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
  const double unreachable = std::max(0.0, hop_m - 1.2 * reachable_mps * dt) / 0.05;
  return std::min(off * off / 2.0, kContact + 0.5 * hop_m / (0.05 + reachable_mps * dt)) + unreachable + colour;
}

}  // namespace ferrule
