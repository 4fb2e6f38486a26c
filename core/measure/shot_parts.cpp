// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/shot_parts.h"

#include <algorithm>
#include <array>

#include "core/measure/reread_shot.h"
#include "core/table/told_values.h"

namespace ferrule {

namespace {

/// Of the time before its strike that a shot's tracks hold.
constexpr double kLead_s = 0.3;
/// A ball that moves less in kStill_s lies still: the finder's noise is a tenth of it.
constexpr double kStill_s = 0.2;
constexpr double kStill_m = 0.004;

/// Flags that tell how a shot ended; all others tell how it began or went on.
constexpr std::array kEndFlags{ShotFlag::CutOffAtEnd, ShotFlag::NextStrikeCame};

bool tellsOfEnd(ShotFlag flag) {
  return std::ranges::find(kEndFlags, flag) != kEndFlags.end();
}

std::vector<ShotFlag> flagsOf(const ShotReading& reading, bool ofEnd) {
  std::vector<ShotFlag> flags = reading.flags;
  std::erase_if(flags, [&](ShotFlag flag) { return tellsOfEnd(flag) != ofEnd; });
  return flags;
}

/// The time of the first image from a time on, or of the last one before it.
std::optional<double> imageFrom_s(const std::vector<Track>& tracks, double from_s) {
  std::optional<double> first_s;
  for (const Track& track : tracks) {
    const auto at = std::ranges::lower_bound(track.samples, from_s, {}, &TrackSample::time_s);
    if (at != track.samples.end()) first_s = std::min(first_s.value_or(at->time_s), at->time_s);
  }
  return first_s;
}
std::optional<double> imageBefore_s(const std::vector<Track>& tracks, double from_s) {
  std::optional<double> last_s;
  for (const Track& track : tracks) {
    const auto at = std::ranges::lower_bound(track.samples, from_s, {}, &TrackSample::time_s);
    if (at != track.samples.begin()) last_s = std::max(last_s.value_or((at - 1)->time_s), (at - 1)->time_s);
  }
  return last_s;
}

/// Whether some ball still moves where the tracks end.
bool endInMotion(const std::vector<Track>& tracks, double end_s) {
  return std::ranges::any_of(tracks, [&](const Track& track) {
    if (track.samples.back().time_s < end_s - kStill_s) return false;  // it fell
    const auto earlier = std::ranges::lower_bound(track.samples, end_s - kStill_s, {}, &TrackSample::time_s);
    return distance(earlier->position, track.samples.back().position) > kStill_m;
  });
}

/// The call was of the first shot.
ReadingKnowledge withoutCall(ReadingKnowledge knowledge) {
  knowledge.call.reset();
  return knowledge;
}

std::vector<Track> copyFrom(std::vector<Track> tracks, double from_s) {
  return cutTracks(tracks, from_s);
}

}  // namespace

std::optional<ShotParts> splitReading(const ShotReading& reading, const std::vector<Track>& tracks, double from_s,
                                      const MeasuredTable& measured, const ReadingKnowledge& knowledge) {
  const auto strike_s = imageFrom_s(tracks, from_s);
  const auto end_s = imageBefore_s(tracks, from_s);
  if (!strike_s || !end_s || *end_s <= reading.strike_s || *strike_s >= reading.rest_s) return std::nullopt;
  ShotParts parts;
  parts.firstTracks = tracks;
  (void)cutTracks(parts.firstTracks, from_s);
  parts.secondTracks = copyFrom(tracks, std::max(from_s - kLead_s, reading.strike_s));

  ShotReading first = reading;
  first.flags = flagsOf(reading, false);
  if (endInMotion(parts.firstTracks, *end_s)) {
    first.flags.push_back(ShotFlag::NextStrikeCame);
    std::ranges::sort(first.flags);
  }
  // What fell later fell in the second shot.
  for (const ShotEvent& event : first.events) {
    if (event.time_s < from_s || event.kind != EventKind::Pocket) continue;
    std::erase_if(first.pocketed, [&](const PocketedBall& fallen) { return fallen.ball == event.ball; });
  }
  std::erase_if(first.events, [&](const ShotEvent& event) { return event.time_s >= from_s; });
  parts.first = rereadShot(first, parts.firstTracks, measured, knowledge, ShotTimes{reading.strike_s, *end_s});
  parts.first.rest_s = std::min(parts.first.rest_s, *end_s);

  ShotReading second;
  second.number = reading.number + 1;
  second.strike_s = *strike_s;
  second.rest_s = reading.rest_s;
  second.before = parts.first.after;
  second.after = reading.after;
  second.flags = flagsOf(reading, true);
  second.outcome = Outcome::Miss;
  second.outcomeVerdict = Verdict::Ask;
  parts.second = rereadShot(second, parts.secondTracks, measured, withoutCall(knowledge));
  return parts;
}

ShotReading joinedReading(const ShotReading& first, const ShotReading& second, const std::vector<Track>& tracks,
                          const MeasuredTable& measured, const ReadingKnowledge& knowledge) {
  ShotReading whole = first;
  whole.rest_s = std::max(first.rest_s, second.rest_s);
  whole.after = second.after;
  whole.flags = flagsOf(first, false);
  for (const ShotFlag flag : flagsOf(second, true))
    whole.flags.push_back(flag);
  std::ranges::sort(whole.flags);
  return rereadShot(whole, tracks, measured, knowledge, ShotTimes{first.strike_s, whole.rest_s});
}

}  // namespace ferrule
