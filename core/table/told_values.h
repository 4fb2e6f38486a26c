// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/table/track.h"

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

/// "12.345 15.250".
[[nodiscard]] std::string toText(const ShotTimes& times);
/// Nothing for other words, and for a rest that comes before the strike.
[[nodiscard]] std::optional<ShotTimes> shotTimesFromText(std::string_view text);

}  // namespace ferrule
