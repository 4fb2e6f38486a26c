// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/resting_watch.h"

#include <algorithm>

#include "core/vision/track_matching.h"

namespace ferrule {

void watchResting(BallScene& scene, BallTrack& track) {
  constexpr double kMoved_m = 0.0008;
  constexpr double kMovedAtOnce_m = 0.0025;
  constexpr int kEnoughFits = 25;
  constexpr double kOtherBall = 12.0;  // colour cost
  const auto wavering = track.patchDifference(scene.picture(), scene.cloth.gain());
  if (wavering) scene.calm.learn(*wavering);
  if (track.rest.count() >= kEnoughFits && wavering && scene.calm.isCalm(*wavering)) {
    track.lastSeen_s = scene.time_s();
    track.missed = 0;
    scene.record(track, true);
    return;
  }
  OutlineFitOptions options;
  options.reach_px = 4.0;
  const auto resting = [](const BallTrack& other) { return other.state == TrackState::Resting; };
  auto fit = scene.finder.fitNear(scene.picture(), track.position, scene.neighboursOf(track, track.position, resting),
                                  options, scene.white);
  const bool clear = fit && fit->quality() >= 0.3 * track.quality;
  const double moved_m = clear ? distance(fit->position, track.rest.mean()) : 0.0;
  if (clear && moved_m < kMoved_m + 3.0 * fit->standardUncertainty_m) {
    if (track.rest.count() < kEnoughFits && fit->quality() > 0.6 * track.quality) {
      track.rest.add(fit->position);
      track.position = track.rest.mean();
      track.cover = std::max(track.cover, scene.coverOf(track));
    }
    track.see(*fit, scene.time_s());
    track.position = track.rest.mean();
    track.velocity_mps = {};
    track.displaced = 0;
    track.keepPatch(scene.picture(), scene.cloth.gain());
    scene.record(track, true);
    return;
  }
  if (clear && fit->quality() >= 0.55 * track.quality && colourCost(track, *fit) < kOtherBall) {
    ++track.displaced;
    if (track.displaced >= 2 || moved_m > kMovedAtOnce_m) {
      scene.startMoving(track);
      track.see(*fit, scene.time_s());
    }
    scene.record(track, true);
    return;
  }
  // Something is in the way, or the ball has left at speed.
  if (scene.coverOf(track) < 0.4 * track.cover) {
    scene.startMoving(track);
    return;
  }
  ++track.missed;
  const bool partly = fit && fit->quality() >= 0.1 * track.quality && distance(fit->position, track.position) < 0.003;
  scene.record(track, partly);
}

}  // namespace ferrule
