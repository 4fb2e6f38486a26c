// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/vision/reading_queue.h"

#include <algorithm>

#include "core/vision/ball_names.h"

namespace ferrule {

namespace {

constexpr double kTold = 20.0;     // a name once told is given up for plain reasons only
constexpr double kCameBack = 3.0;  // that a ball that fell comes back is less likely than one that was never seen
constexpr double kTwiceThere = 1e6;

/// A ball that was there together with one that fell is not that one; a later one may be, when it was put back.
void heedBallsDown(NameLikelihood& evidence, const BallTrack& track, std::span<const BallTrack> tracks) {
  for (const BallTrack& down : tracks) {
    if (!down.isDown() || !down.told) continue;
    const bool together = track.firstSeen_s <= down.lastSeen_s;
    evidence[static_cast<std::size_t>(down.told->number())] -= together ? kTwiceThere : kCameBack;
  }
}

/// Names every ball on the table, so that no name is there twice, and none inherits the name of a ball that is down.
std::map<int, BallName> namesOf(std::span<const BallTrack> tracks) {
  std::vector<NameLikelihood> evidence;
  std::vector<int> named;
  for (const BallTrack& track : tracks) {
    const bool lately = track.state == TrackState::Gone && !track.pocketed && !track.replaced;
    if (!track.onTable() && !lately) continue;
    evidence.push_back(track.names);
    if (track.told) evidence.back()[static_cast<std::size_t>(track.told->number())] += kTold;
    heedBallsDown(evidence.back(), track, tracks);
    named.push_back(track.id);
  }
  const auto names = nameBalls(evidence);
  std::map<int, BallName> nameOf;
  for (std::size_t i = 0; i < named.size(); ++i) {
    if (names[i]) nameOf[named[i]] = *names[i];
  }
  for (const BallTrack& track : tracks) {
    // A ball that fell may still have images waiting from before, whether or not it was put back since.
    if (track.told && (track.isDown() || track.replaced)) nameOf.emplace(track.id, *track.told);
  }
  return nameOf;
}

/// The tracks remember what was told of them.
void remember(std::span<BallTrack> tracks, const std::map<int, BallName>& nameOf) {
  for (BallTrack& track : tracks) {
    if (const auto name = nameOf.find(track.id); name != nameOf.end()) track.told = name->second;
  }
  for (BallTrack& track : tracks) {
    if (!track.told || !track.isDown()) continue;
    track.replaced = std::ranges::any_of(
        tracks, [&](const BallTrack& other) { return other.onTable() && other.told == track.told; });
  }
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
  const auto nameOf = namesOf(tracks);
  remember(tracks, nameOf);
  for (; due(); pending_.pop_front())
    ready.push_back(named(pending_.front(), nameOf));
}

std::optional<ImageReading> ReadingQueue::newest(std::span<const BallTrack> tracks) const {
  if (pending_.empty()) return std::nullopt;
  return named(pending_.back(), namesOf(tracks));
}

ImageReading ReadingQueue::named(const Image& image, const std::map<int, BallName>& nameOf) {
  ImageReading reading{image.number, image.time_s, {}};
  for (const Sample& sample : image.samples) {
    const auto name = nameOf.find(sample.track);
    if (name == nameOf.end()) continue;
    reading.balls.push_back({name->second, sample.position, sample.standardUncertainty_m, sample.seen, false});
  }
  std::ranges::stable_sort(reading.balls, {}, &BallSample::ball);
  return reading;
}

}  // namespace ferrule
