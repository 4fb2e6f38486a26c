// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>

#include "core/progress/played_shot.h"
#include "core/progress/sample.h"

/// Whether the chances that suggestions state are kept: what was predicted against what came out.
namespace ferrule {

inline constexpr std::size_t kChanceBandCount = 10;

/// Shots whose chance lies in one tenth.
struct ChanceBand {
  int tried = 0;
  int made = 0;
  double predicted = 0.0;          ///< mean of the chances
  std::optional<Interval> wilson;  ///< of the share made; nothing where nothing was tried

  [[nodiscard]] bool isEnough() const { return tried >= kFewestForShare; }
  [[nodiscard]] double share() const { return static_cast<double>(made) / tried; }
  bool operator==(const ChanceBand&) const = default;
};

/// Of the pots that were tried beside a judged suggestion, both kinds of intent together. The chance is the taken
/// plan's, for the player's own scatter, with the speed and spin that were struck. A miss that nobody could tell from a
/// safety is not among them, so that where targets are read from the balls the share made is a little too high.
struct Reliability {
  std::array<ChanceBand, kChanceBandCount> bands;
  int shots = 0;
  Answer<Estimate> gap = shortOf(ShortageKind::NoValues);  ///< share made less mean chance; sessions drawn again
  /// Mean of (chance - made)2, 0 for a seer, 0.25 for a coin's half said of everything.
  /// Source: Brier 1950, Monthly Weather Review 78, 1.
  Answer<Estimate> brier = shortOf(ShortageKind::NoValues);
};

[[nodiscard]] std::size_t chanceBand(double chance);
[[nodiscard]] Reliability reliability(const PlayerHistory& history, const Resampling& resampling);

/// Whether a shot is one of these.
[[nodiscard]] inline bool hasPrediction(const PlayedShot& shot) {
  return shot.potChance.has_value() && isPotAttempt(shot);
}

}  // namespace ferrule
