// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/reading_queue.h"

#include <algorithm>
#include <map>

#include "core/vision/ball_names.h"

namespace ferrule {

namespace {

/// Names every ball that is on the table or down; a pocketed ball keeps its name, so that no other ball inherits it.
std::map<int, BallName> nameTracks(std::span<BallTrack> tracks) {
  constexpr double kTold = 20.0;  // a name once told is given up for plain reasons only
  std::vector<NameLikelihood> evidence;
  std::vector<BallTrack*> named;
  for (BallTrack& track : tracks) {
    if (!track.onTable() && !(track.state == TrackState::Gone && !track.replaced)) continue;
    evidence.push_back(track.names);
    if (track.told) evidence.back()[static_cast<std::size_t>(track.told->number())] += kTold;
    named.push_back(&track);
  }
  const auto names = nameBalls(evidence);
  std::map<int, BallName> nameOf;
  for (std::size_t i = 0; i < named.size(); ++i) {
    if (!names[i]) continue;
    nameOf[named[i]->id] = *names[i];
    named[i]->told = *names[i];
  }
  // A ball that was put back may still have images waiting from before it fell.
  for (const BallTrack& track : tracks) {
    if (track.replaced && track.told) nameOf.emplace(track.id, *track.told);
  }
  return nameOf;
}

}  // namespace

void ReadingQueue::forgetAfter(int track, double time_s) {
  for (Image& image : pending_) {
    if (image.time_s > time_s)
      std::erase_if(image.samples, [&](const Sample& sample) { return sample.track == track; });
  }
}

void ReadingQueue::release(std::span<BallTrack> tracks, double now_s, double lag_s, std::vector<ImageReading>& ready) {
  const auto due = [&] { return !pending_.empty() && (lag_s < 0.0 || now_s - pending_.front().time_s >= lag_s); };
  if (!due()) return;
  const auto nameOf = nameTracks(tracks);
  for (; due(); pending_.pop_front()) {
    const Image& image = pending_.front();
    ImageReading reading{image.number, image.time_s, {}};
    for (const Sample& sample : image.samples) {
      const auto name = nameOf.find(sample.track);
      if (name == nameOf.end()) continue;
      reading.balls.push_back({name->second, sample.position, sample.standardUncertainty_m, sample.seen, false});
    }
    std::ranges::stable_sort(reading.balls, {}, &BallSample::ball);
    ready.push_back(std::move(reading));
  }
}

}  // namespace ferrule
