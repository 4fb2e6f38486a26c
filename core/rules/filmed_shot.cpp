// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/filmed_shot.h"

#include <algorithm>
#include <cmath>

namespace ferrule {

namespace {

/// Of two contacts nearer than this along the cue ball's way, and less than one image apart, no film tells the order.
/// Common practice, no source.
constexpr double kSplitHit_m = 0.003;
constexpr double kUsualImage_s = 1.0 / 60.0;
/// A ball whose edge came this near to a nose without turning may have touched it. Common practice, no source.
constexpr double kNearRail_m = 0.005;
/// A ball that moved this far was moved: 3 mm, and the worst error of a ball's place once more.
constexpr double kMoved_m = 0.006;
/// A ball that came this near to another one's edge may have met it unseen, as happens in a rack. Common practice, no
/// source.
constexpr double kUnseenContact_m = 0.020;

bool isAbout(const ShotEvent& event, BallName ball) {
  return event.ball == ball || event.other == ball;
}

double imageSpacing_s(std::span<const Track> tracks) {
  for (const Track& track : tracks) {
    if (!track.ball.isCueBall() || track.samples.size() < 2) continue;
    const double whole_s = track.samples.back().time_s - track.samples.front().time_s;
    return whole_s / static_cast<double>(track.samples.size() - 1);
  }
  return kUsualImage_s;
}

/// The cue ball's first two contacts with different balls, when their order cannot be told.
std::optional<Doubt> splitHit(const ShotReading& reading, double spacing_s) {
  const ShotEvent* first = nullptr;
  for (const ShotEvent& event : reading.events) {
    if (event.kind != EventKind::Ball || !event.other || !event.ball.isCueBall()) continue;
    if (first == nullptr) {
      first = &event;
      continue;
    }
    const bool close = event.time_s - first->time_s < spacing_s &&
                       distance(event.position, first->position) < kSplitHit_m && event.other != first->other;
    if (!close) return std::nullopt;
    return Doubt{DoubtKind::SplitHit, first->other, event.other};
  }
  return std::nullopt;
}

/// The gap between a ball's edge and the nearest cushion nose.
double railGap_m(const Table& table, TablePoint place, double radius_m) {
  return std::min(table.length_m / 2.0 - std::abs(place.x), table.width_m / 2.0 - std::abs(place.y)) - radius_m;
}

bool cameNearARail(const ShotReading& reading, const Track& track, const Table& table, double radius_m) {
  const BallAt* lay = ballIn(reading.before, track.ball);
  if (lay == nullptr) return false;
  return std::ranges::any_of(track.samples, [&](const TrackSample& sample) {
    return sample.seen && sample.time_s >= reading.strike_s && sample.time_s <= reading.rest_s &&
           railGap_m(table, sample.position, radius_m) < kNearRail_m &&
           distance(sample.position, lay->position) > kMoved_m;
  });
}

/// Whether another ball lay beside this one or passed it closely enough to have moved it.
bool mayHaveBeenMet(const ShotReading& reading, std::span<const Track> tracks, const BallAt& lay, double radius_m) {
  const double reach_m = 2.0 * radius_m + kUnseenContact_m;
  const auto near = [&](BallName ball, TablePoint place) {
    return ball != lay.ball && distance(place, lay.position) < reach_m;
  };
  return std::ranges::any_of(reading.before, [&](const BallAt& at) { return near(at.ball, at.position); }) ||
         std::ranges::any_of(tracks, [&](const Track& track) {
           return std::ranges::any_of(track.samples,
                                      [&](const TrackSample& s) { return near(track.ball, s.position); });
         });
}

std::vector<Doubt> doubtsOfPaths(const ShotReading& reading, std::span<const Track> tracks, const Table& table,
                                 double radius_m) {
  std::vector<Doubt> doubts;
  if (auto split = splitHit(reading, imageSpacing_s(tracks))) doubts.push_back(*split);
  const auto happened = [&](BallName ball, auto&& wanted) {
    return std::ranges::any_of(reading.events,
                               [&](const ShotEvent& event) { return isAbout(event, ball) && wanted(event.kind); });
  };
  for (const Track& track : tracks) {
    const bool railOrGone = happened(track.ball, [](EventKind kind) { return kind != EventKind::Ball; });
    if (!railOrGone && cameNearARail(reading, track, table, radius_m)) {
      doubts.push_back({DoubtKind::NearRail, track.ball, std::nullopt});
    }
  }
  for (const BallAt& lay : reading.before) {
    const BallAt* rests = ballIn(reading.after, lay.ball);
    const bool gone =
        happened(lay.ball, [](EventKind kind) { return kind == EventKind::Pocket || kind == EventKind::OffTable; });
    if (rests == nullptr) {
      if (!gone) doubts.push_back({DoubtKind::BallLost, lay.ball, std::nullopt});
      continue;
    }
    const bool touched = lay.ball.isCueBall() || happened(lay.ball, [](EventKind) { return true; });
    if (!touched && distance(lay.position, rests->position) > kMoved_m &&
        !mayHaveBeenMet(reading, tracks, lay, radius_m)) {
      doubts.push_back({DoubtKind::MovedByHand, lay.ball, std::nullopt});
    }
  }
  return doubts;
}

std::optional<std::vector<BallName>> ballsPast(std::span<const Track> tracks, double headString_m) {
  if (tracks.empty()) return std::nullopt;
  std::vector<BallName> past;
  for (const Track& track : tracks) {
    if (track.ball.isCueBall()) continue;
    if (std::ranges::any_of(track.samples,
                            [&](const TrackSample& sample) { return sample.position.x <= headString_m; }))
      past.push_back(track.ball);
  }
  return past;
}

}  // namespace

ShotEvents filmedShot(const ShotReading& reading, std::span<const Track> tracks, const Table& table,
                      double ballRadius_m) {
  ShotEvents shot;
  shot.witness = Witness::Camera;
  shot.before = reading.before;
  shot.after = reading.after;
  shot.events = reading.events;
  shot.firstContact = reading.firstContact;
  shot.pastHeadString = ballsPast(tracks, headString_m(table));
  shot.doubts = doubtsOfPaths(reading, tracks, table, ballRadius_m);
  // The film does not hold the whole shot, or the reading says that it is not sure and nothing above says of what.
  const bool cutOff = std::ranges::any_of(reading.flags, [](ShotFlag flag) {
    return flag == ShotFlag::CutOffAtStart || flag == ShotFlag::CutOffAtEnd || flag == ShotFlag::NextStrikeCame;
  });
  if (cutOff || (reading.outcomeVerdict == Verdict::Ask && shot.doubts.empty())) {
    shot.doubts.push_back({DoubtKind::Unfinished, std::nullopt, std::nullopt});
  }
  return shot;
}

}  // namespace ferrule
