// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/moment.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

/// Two times closer than this are one: the record keeps 0.1 ms.
constexpr double kSameTime_s = 0.0002;

bool fellBefore(const StoredShot& shot, BallName ball, double time_s) {
  return std::ranges::any_of(shot.reading.events, [&](const ShotEvent& event) {
    return event.ball == ball && (event.kind == EventKind::Pocket || event.kind == EventKind::OffTable) &&
           event.time_s <= time_s;
  });
}

BallNow between(BallName ball, const TrackSample& a, const TrackSample& b, double time_s) {
  const double share = (time_s - a.time_s) / (b.time_s - a.time_s);
  const TrackSample& nearer = share < 0.5 ? a : b;
  return {ball, a.position + share * (b.position - a.position), nearer.standardUncertainty_m, nearer.seen};
}

std::optional<BallNow> onTrack(const Track& track, double time_s) {
  const auto after = std::ranges::upper_bound(track.samples, time_s + kSameTime_s, {}, &TrackSample::time_s);
  if (after == track.samples.begin()) return std::nullopt;
  const TrackSample& a = *(after - 1);
  if (after == track.samples.end() || std::abs(a.time_s - time_s) <= kSameTime_s) {
    if (after == track.samples.end() && time_s > a.time_s + kSameTime_s) return std::nullopt;
    return BallNow{track.ball, a.position, a.standardUncertainty_m, a.seen};
  }
  return between(track.ball, a, *after, time_s);
}

void sortOnce(std::vector<double>& times) {
  std::ranges::sort(times);
  const auto same = std::ranges::unique(times, [](double a, double b) { return b - a < kSameTime_s; });
  times.erase(same.begin(), same.end());
}

}  // namespace

std::vector<BallNow> ballsAt(const StoredShot& shot, double time_s) {
  std::vector<BallNow> balls;
  for (int number = 0; number < BallName::kCount; ++number) {
    const BallName ball{number};
    const auto track = std::ranges::find(shot.tracks, ball, &Track::ball);
    const bool tracked = track != shot.tracks.end() && !track->samples.empty();
    if (tracked) {
      if (const auto now = onTrack(*track, time_s)) {
        balls.push_back(*now);
        continue;
      }
    }
    if (fellBefore(shot, ball, time_s)) continue;
    const bool isBefore = tracked ? time_s < track->samples.front().time_s : time_s < shot.reading.rest_s;
    if (const BallAt* rest = ballIn(isBefore ? shot.reading.before : shot.reading.after, ball)) {
      balls.push_back({ball, rest->position, 0.0, true});
    }
  }
  return balls;
}

std::optional<ShotEvent> eventAt(const StoredShot& shot, double time_s, double spacing_s) {
  const ShotEvent* nearest = nullptr;
  for (const ShotEvent& event : shot.reading.events) {
    const double away_s = std::abs(event.time_s - time_s);
    if (away_s > spacing_s / 2.0 + kSameTime_s) continue;
    if (nearest == nullptr || away_s < std::abs(nearest->time_s - time_s)) nearest = &event;
  }
  return nearest == nullptr ? std::nullopt : std::optional<ShotEvent>(*nearest);
}

std::vector<double> trackTimes(const StoredShot& shot) {
  std::vector<double> times;
  for (const Track& track : shot.tracks) {
    for (const TrackSample& sample : track.samples)
      times.push_back(sample.time_s);
  }
  sortOnce(times);
  return times;
}

std::vector<double> eventTimes(const StoredShot& shot) {
  std::vector<double> times{shot.reading.strike_s, shot.reading.rest_s};
  for (const ShotEvent& event : shot.reading.events)
    times.push_back(event.time_s);
  sortOnce(times);
  return times;
}

}  // namespace ferrule
