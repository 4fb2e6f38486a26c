// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/reading/read_shot.h"

/// Shots of the record whose boundaries were wrong, read again from their tracks.
namespace ferrule {

/// One recorded shot as the two that it was.
struct ShotParts {
  ShotReading first;
  ShotReading second;  ///< its number is the first's and one
  std::vector<Track> firstTracks;
  std::vector<Track> secondTracks;  ///< begin a little before its strike, as the tracks of every shot do
};

/// Two shots that were read as one. from_s: film time from which on it is the second; it was struck in the first image
/// after that. Nothing where the tracks do not hold images on both sides between strike and rest.
[[nodiscard]] std::optional<ShotParts> splitReading(const ShotReading& reading, const std::vector<Track>& tracks,
                                                    double from_s, const MeasuredTable& measured,
                                                    const ReadingKnowledge& knowledge);

/// One shot that was read as two. tracks: of both.
[[nodiscard]] ShotReading joinedReading(const ShotReading& first, const ShotReading& second,
                                        const std::vector<Track>& tracks, const MeasuredTable& measured,
                                        const ReadingKnowledge& knowledge);

}  // namespace ferrule
