// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/ball_search.h"

#include <algorithm>
#include <iterator>

#include "core/vision/disc_cover.h"
#include "core/vision/search_gate.h"

namespace ferrule {

namespace {

constexpr double kHidden_s = 0.5;  ///< a ball that stays covered longer is looked for in the rounds only

bool searchedFor(const BallTrack& track) {
  if (track.state == TrackState::Resting) return track.missed > 0;  // covered: it may lie there still, or have left
  return track.state == TrackState::Moving || track.state == TrackState::Tentative || track.state == TrackState::Hidden;
}

cv::Rect gateOf(const BallScene& scene, const BallTrack& track) {
  const double reach_m = reachSinceSeen_m(track, scene.tracks, scene.time_s(), scene.radius_m());
  const auto outline = silhouetteOf(scene.rig, scene.limits.onSurface(track.position), scene.radius_m());
  return outline ? gateAround(*outline, reach_m / scene.radius_m(), scene.scale, scene.smallSize()) : cv::Rect();
}

/// A ball among others may have no blob of its own; look where it should be.
void addPredicted(const BallScene& scene, const BallTrack& track, Neighbours known,
                  std::vector<BallCandidate>& candidates) {
  const TablePoint expected = track.predicted(scene.time_s());
  // A candidate there as good as the ball usually shows is the ball; a poor one may be its number or its shadow.
  constexpr double kAsGood = 0.7;
  const auto there = std::ranges::find_if(candidates, [&](const BallCandidate& candidate) {
    return distance(candidate.position, expected) < scene.radius_m();
  });
  if (there != candidates.end() && there->quality() > kAsGood * track.quality) return;
  auto candidate = scene.fitForeseen(track, known, 6.0);
  if (!candidate || candidate->quality() < 0.3 * track.quality) return;
  if (there == candidates.end()) {
    candidates.push_back(*candidate);
  } else if (candidate->quality() > there->quality()) {
    candidate->alone = there->alone;
    *there = *candidate;
  }
}

void guessWhite(BallScene& scene, std::vector<BallCandidate>& candidates) {
  constexpr double kBall = 0.4;  // belief
  std::vector<BallColours> looks;
  for (const BallCandidate& candidate : candidates) {
    if (candidate.belief() >= kBall) looks.push_back(candidate.colours);
  }
  const WhiteReference before = scene.white;
  scene.white.guess(looks);
  if (scene.white == before) return;
  for (BallCandidate& candidate : candidates)
    scene.finder.lookAtColours(scene.picture(), scene.white, candidate);
}

}  // namespace

SearchResult searchForBalls(BallScene& scene) {
  // Images between looks for balls that nobody expects.
  const int lookInterval = scene.opening() ? 4 : 10;
  const bool lookRound = scene.images() % lookInterval == 0;
  std::vector<cv::Rect> regions;
  bool clusters = scene.opening();
  for (const BallTrack& track : scene.tracks) {
    if (!searchedFor(track) || track.lastSeen_s == scene.time_s() || track.state == TrackState::Hidden) continue;
    if (track.state == TrackState::Resting && scene.time_s() - track.lastSeen_s > kHidden_s) continue;
    addGate(regions, gateOf(scene, track));
    clusters = clusters || track.state == TrackState::Moving;
  }
  if (lookRound) regions = {cv::Rect(0, 0, scene.smallSize().width, scene.smallSize().height)};
  SearchResult result;
  if (regions.empty()) return result;
  std::vector<Silhouette> known;
  cv::Mat unexplained = scene.away().clone();
  for (const BallTrack& track : scene.tracks) {
    if (!scene.isPlaced(track)) continue;
    known.push_back(track.outline);
    fillDisc(unexplained, scene.scale, track.outline, 1.15, 0);
  }
  for (const cv::Rect& region : regions) {
    std::ranges::move(
        scene.finder.find(scene.picture(), scene.small(), unexplained, region, known, scene.white, clusters),
        std::back_inserter(result.candidates));
  }
  if (!scene.white.seen) guessWhite(scene, result.candidates);
  for (std::size_t i = 0; i < scene.tracks.size(); ++i) {
    const BallTrack& track = scene.tracks[i];
    if (track.lastSeen_s == scene.time_s()) continue;
    if (!searchedFor(track)) continue;
    result.open.push_back(i);
    // A racked ball that is not yet believed loses its blob as soon as its neighbours are placed.
    if (track.state == TrackState::Moving || (track.state == TrackState::Tentative && scene.opening()))
      addPredicted(scene, track, known, result.candidates);
  }
  std::erase_if(result.candidates, [&](const BallCandidate& candidate) {
    return std::ranges::any_of(scene.tracks, [&](const BallTrack& track) {
      return scene.isPlaced(track) && distance(track.position, candidate.position) < 1.5 * scene.radius_m();
    });
  });
  return result;
}

}  // namespace ferrule
