// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/search_gate.h"

#include <algorithm>

#include "core/vision/track_matching.h"

namespace ferrule {

namespace {

double fastestNear_mps(const BallTrack& track, std::span<const BallTrack> tracks, double dt, double radius_m) {
  double fastest_mps = length(track.velocity_mps);
  for (const BallTrack& other : tracks) {
    if (other.state != TrackState::Moving) continue;
    const double speed_mps = other.fixes.size() > 1 ? length(other.velocity_mps) : kHighestSpeed_mps;
    const double reach_m = (speed_mps + length(track.velocity_mps)) * dt + 3.0 * radius_m;
    if (distance(other.position, track.position) < reach_m) fastest_mps = std::max(fastest_mps, speed_mps);
  }
  return fastest_mps;
}

}  // namespace

double reachSinceSeen_m(const BallTrack& track, std::span<const BallTrack> tracks, double time_s, double radius_m) {
  constexpr double kMargin_m = 0.05;
  const double dt = std::max(time_s - track.lastSeen_s, 1e-3);
  const bool known = track.missed == 0 && track.fixes.size() > 1;
  const double fastest_mps = known ? 1.3 * fastestNear_mps(track, tracks, dt, radius_m) : kHighestSpeed_mps;
  return fastest_mps * dt + kMargin_m + radius_m;
}

cv::Rect gateAround(const Silhouette& outline, double radii, SmallScale scale, cv::Size picture) {
  const double reach_px = radii * outline.radius_px() / scale.factor;
  const ImagePoint centre = scale.toSmall(outline.centre);
  const int side = static_cast<int>(2.0 * reach_px) + 1;
  return cv::Rect(static_cast<int>(centre.x - reach_px), static_cast<int>(centre.y - reach_px), side, side) &
         cv::Rect(0, 0, picture.width, picture.height);
}

void addGate(std::vector<cv::Rect>& gates, cv::Rect gate) {
  if (gate.empty()) return;
  for (std::size_t i = 0; i < gates.size();) {
    if ((gates[i] & gate).empty()) {
      ++i;
      continue;
    }
    gate |= gates[i];
    gates.erase(gates.begin() + static_cast<std::ptrdiff_t>(i));
    i = 0;
  }
  gates.push_back(gate);
}

}  // namespace ferrule
