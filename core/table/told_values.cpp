// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/table/told_values.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <iterator>

#include "core/table/shot_text.h"

namespace ferrule {

namespace {

constexpr double kStep = 1e-6;

std::vector<std::string_view> wordsOf(std::string_view text) {
  std::vector<std::string_view> words;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    words.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return words;
}

std::optional<double> numberFrom(std::string_view word) {
  double value = 0.0;
  const auto [end, error] = std::from_chars(word.data(), word.data() + word.size(), value);
  if (error != std::errc() || end != word.data() + word.size() || !std::isfinite(value)) return std::nullopt;
  return value;
}

/// The shortest decimal that gives the same double again.
std::string exactText(double value) {
  char digits[32];
  const auto [end, error] = std::to_chars(std::begin(digits), std::end(digits), value);
  return error == std::errc() ? std::string(std::begin(digits), end) : std::string("0");
}

/// The place of a ball's track, made where there is none.
Track& trackOf(std::vector<Track>& tracks, BallName ball) {
  const auto at = std::ranges::lower_bound(tracks, ball, {}, &Track::ball);
  if (at != tracks.end() && at->ball == ball) return *at;
  return *tracks.insert(at, Track{ball, {}});
}

}  // namespace

std::string toText(const SwappedNames& names) {
  std::string text = toText(names.one) + ' ' + toText(names.other);
  if (names.from_s) text += ' ' + numberText(*names.from_s, kStep);
  return text;
}

std::optional<SwappedNames> swappedNamesFromText(std::string_view text) {
  const auto words = wordsOf(text);
  if (words.size() != 2 && words.size() != 3) return std::nullopt;
  const auto one = ballFromText(words[0]);
  const auto other = ballFromText(words[1]);
  if (!one || !other || *one == *other) return std::nullopt;
  SwappedNames names{*one, *other, std::nullopt};
  if (words.size() == 3) {
    names.from_s = numberFrom(words[2]);
    if (!names.from_s) return std::nullopt;
  }
  return names;
}

void swapNames(std::vector<Track>& tracks, const SwappedNames& names) {
  // Both are made before either is held: making one moves the others.
  (void)trackOf(tracks, names.one);
  (void)trackOf(tracks, names.other);
  std::vector<TrackSample>& one = trackOf(tracks, names.one).samples;
  std::vector<TrackSample>& other = trackOf(tracks, names.other).samples;
  const auto cutOf = [&](std::vector<TrackSample>& samples) {
    if (!names.from_s) return samples.begin();
    return std::ranges::lower_bound(samples, *names.from_s, {}, &TrackSample::time_s);
  };
  const std::vector<TrackSample> tail(cutOf(one), one.end());
  const std::vector<TrackSample> otherTail(cutOf(other), other.end());
  one.erase(cutOf(one), one.end());
  other.erase(cutOf(other), other.end());
  one.insert(one.end(), otherTail.begin(), otherTail.end());
  other.insert(other.end(), tail.begin(), tail.end());
  std::erase_if(tracks, [](const Track& track) { return track.samples.empty(); });
}

std::string ballPlaceText(const BallAt& at) {
  return toText(at.ball) + ' ' + numberText(at.position.x, kStep) + ' ' + numberText(at.position.y, kStep);
}

std::optional<BallAt> ballPlaceFromText(std::string_view text) {
  const auto words = wordsOf(text);
  if (words.size() != 3) return std::nullopt;
  const auto ball = ballFromText(words[0]);
  const auto x_m = numberFrom(words[1]);
  const auto y_m = numberFrom(words[2]);
  if (!ball || !x_m || !y_m) return std::nullopt;
  return BallAt{*ball, {*x_m, *y_m}};
}

std::string toText(const ShotBoundary& boundary) {
  return numberText(boundary.time_s, kStep) + ' ' + std::to_string(boundary.shot);
}

std::optional<ShotBoundary> shotBoundaryFromText(std::string_view text) {
  const auto words = wordsOf(text);
  if (words.size() != 2) return std::nullopt;
  const auto time_s = numberFrom(words[0]);
  std::int64_t shot = 0;
  const auto [end, error] = std::from_chars(words[1].data(), words[1].data() + words[1].size(), shot);
  if (!time_s || error != std::errc() || end != words[1].data() + words[1].size() || shot <= 0) return std::nullopt;
  return ShotBoundary{*time_s, shot};
}

std::string toldPlacementText(const Placement& placement) {
  return toText(placement.ball) + ' ' + exactText(placement.time_s) + ' ' + exactText(placement.position.x) + ' ' +
         exactText(placement.position.y);
}

std::optional<Placement> toldPlacementFromText(std::string_view text) {
  const auto words = wordsOf(text);
  if (words.size() != 4) return std::nullopt;
  const auto ball = ballFromText(words[0]);
  const auto time_s = numberFrom(words[1]);
  const auto x_m = numberFrom(words[2]);
  const auto y_m = numberFrom(words[3]);
  if (!ball || !time_s || !x_m || !y_m) return std::nullopt;
  return Placement{*ball, *time_s, {*x_m, *y_m}};
}

std::vector<Track> cutTracks(std::vector<Track>& tracks, double from_s) {
  std::vector<Track> cut;
  for (Track& track : tracks) {
    const auto at = std::ranges::lower_bound(track.samples, from_s, {}, &TrackSample::time_s);
    if (at != track.samples.end()) cut.push_back({track.ball, {at, track.samples.end()}});
    track.samples.erase(at, track.samples.end());
  }
  std::erase_if(tracks, [](const Track& track) { return track.samples.empty(); });
  return cut;
}

void appendTracks(std::vector<Track>& tracks, const std::vector<Track>& later) {
  for (const Track& track : later) {
    std::vector<TrackSample>& samples = trackOf(tracks, track.ball).samples;
    samples.insert(samples.end(), track.samples.begin(), track.samples.end());
  }
}

std::string toText(const ShotTimes& times) {
  return numberText(times.strike_s, kStep) + ' ' + numberText(times.rest_s, kStep);
}

std::optional<ShotTimes> shotTimesFromText(std::string_view text) {
  const auto words = wordsOf(text);
  if (words.size() != 2) return std::nullopt;
  const auto strike_s = numberFrom(words[0]);
  const auto rest_s = numberFrom(words[1]);
  if (!strike_s || !rest_s || *rest_s < *strike_s) return std::nullopt;
  return ShotTimes{*strike_s, *rest_s};
}

}  // namespace ferrule
