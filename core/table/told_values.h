// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/table/shot.h"

/// What a person puts right of a shot's picture, as a correction keeps it: short words of the files.
namespace ferrule {

/// Two balls whose names were taken for each other.
struct SwappedNames {
  BallName one;
  BallName other;
  std::optional<double> from_s;  ///< film time from which on; nothing: all the way

  bool operator==(const SwappedNames&) const = default;
};

/// "5 8", "5 8 12.345".
[[nodiscard]] std::string toText(const SwappedNames& names);
/// Nothing for other words, and for a ball and itself.
[[nodiscard]] std::optional<SwappedNames> swappedNamesFromText(std::string_view text);
/// Gives the samples of each ball to the other. The same again puts them back. A ball without a track counts as one of
/// no samples, and a track that loses all is gone. tracks: in the order of the names.
void swapNames(std::vector<Track>& tracks, const SwappedNames& names);

/// A ball and its place: "cue 0.100000 -0.200000" in m.
[[nodiscard]] std::string ballPlaceText(const BallAt& at);
[[nodiscard]] std::optional<BallAt> ballPlaceFromText(std::string_view text);

/// From the strike until rest, film time.
struct ShotTimes {
  double strike_s = 0.0;
  double rest_s = 0.0;

  bool operator==(const ShotTimes&) const = default;
};

/// Where one shot ends and another begins: film time, and the other shot's number in the record (ShotId).
struct ShotBoundary {
  double time_s = 0.0;
  std::int64_t shot = 0;

  bool operator==(const ShotBoundary&) const = default;
};

/// "12.345 77".
[[nodiscard]] std::string toText(const ShotBoundary& boundary);
[[nodiscard]] std::optional<ShotBoundary> shotBoundaryFromText(std::string_view text);

/// A placement with all its digits, so that the same words find it again: "5 9.25 0.1 -0.2" in s and m.
[[nodiscard]] std::string toldPlacementText(const Placement& placement);
[[nodiscard]] std::optional<Placement> toldPlacementFromText(std::string_view text);

/// Takes the samples from a time on out of tracks. A track that loses all is gone.
[[nodiscard]] std::vector<Track> cutTracks(std::vector<Track>& tracks, double from_s);
/// Puts samples behind those that are there. later: none earlier than the last sample of tracks.
void appendTracks(std::vector<Track>& tracks, const std::vector<Track>& later);

/// "12.345 15.250".
[[nodiscard]] std::string toText(const ShotTimes& times);
/// Nothing for other words, and for a rest that comes before the strike.
[[nodiscard]] std::optional<ShotTimes> shotTimesFromText(std::string_view text);

}  // namespace ferrule
