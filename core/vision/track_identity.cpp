// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/track_identity.h"

#include <algorithm>

#include "core/vision/ball_names.h"

namespace ferrule {

namespace {

constexpr double kBelief_s = 0.15;  ///< a new ball must be seen this long

/// The log-likelihood for the fresh track of the likeliest name that no other ball holds; nothing when all are taken.
/// withPocketed: balls that are down hold theirs too.
std::optional<double> freeName(const BallTrack& fresh, std::span<const BallTrack> tracks, bool withPocketed) {
  std::vector<NameLikelihood> evidence;
  for (const BallTrack& other : tracks) {
    if (other.onTable() || (withPocketed && other.isDown())) evidence.push_back(other.names);
  }
  if (evidence.size() >= BallName::kCount) return std::nullopt;
  evidence.push_back(fresh.names);
  const auto own = nameBalls(evidence).back();
  if (!own) return std::nullopt;
  return fresh.names[static_cast<std::size_t>(own->number())];
}

}  // namespace

bool passesForBall(const BallTrack& fresh, std::span<const BallTrack> tracks, double time_s, bool opening) {
  constexpr double kFair = -9.0;  // log-likelihood a look
  if (fresh.hits < 5 || fresh.looks < 4 || time_s - fresh.fixes.front().time_s < kBelief_s) return false;
  if (fresh.meanBelief() < (opening ? 0.4 : 0.65)) return false;
  const bool still = fresh.stoodStill().has_value();
  if (!still && fresh.aloneHits < fresh.hits / 2) return false;
  const auto name = freeName(fresh, tracks, false);
  return name && *name / std::max(fresh.looks, 1) > kFair;
}

BallTrack* sameBallAs(const BallTrack& fresh, std::span<BallTrack> tracks) {
  constexpr double kFar = 3.0;  // log-likelihood a look
  double needed = freeName(fresh, tracks, true).value_or(-1e9) + kFar * std::max(fresh.looks, 1);
  for (const BallTrack& other : tracks) {
    // It may as well have been put back.
    if (other.told && other.isDown())
      needed = std::max(needed, fresh.names[static_cast<std::size_t>(other.told->number())]);
  }
  BallTrack* best = nullptr;
  for (BallTrack& other : tracks) {
    if (!other.told || other.id == fresh.id || !other.onTable() || other.missed == 0) continue;
    if (other.lastSeen_s >= fresh.firstSeen_s) continue;
    const double likelihood = fresh.names[static_cast<std::size_t>(other.told->number())];
    if (likelihood <= needed) continue;
    needed = likelihood;
    best = &other;
  }
  return best;
}

}  // namespace ferrule
