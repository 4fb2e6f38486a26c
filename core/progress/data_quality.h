// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/progress/played_shot.h"

/// What the numbers of a report rest on, and what was left out.
namespace ferrule {

/// A table whose shots were left out, since its pockets differ.
struct TableLeftOut {
  std::string name;
  double cornerMouth_m = 0.0;
  int shots = 0;
  int sessions = 0;

  bool operator==(const TableLeftOut&) const = default;
};

/// Mouths that differ by less than this are one width: a steel rule's reading. Common practice, no source.
inline constexpr double kSameMouth_m = 0.002;
/// Tables whose length differs by less are of one size.
inline constexpr double kSameLength_m = 0.05;

/// One history for each size of table and width of pockets, the one with most shots first (the earliest among equals).
/// Nothing that depends on the pockets may be put together over two of them.
[[nodiscard]] std::vector<PlayerHistory> byPocketWidth(PlayerHistory history);

struct DataQuality {
  int shots = 0;
  int sessions = 0;
  double hours = 0.0;  ///< from the first to the last shot of each session that has times
  int attempts = 0;    ///< straight pots that were tried
  int untracked = 0;   ///< the film did not show how the cue ball was struck
  int corrected = 0;   ///< a person changed something
  int asked = 0;       ///< still wait for a person's word
  int called = 0;      ///< attempts whose target a person named
  int suggested = 0;   ///< the player or coach saw suggestions before them
  int matchSessions = 0;
  int undatedShots = 0;    ///< without a place in their session's time
  int futureSessions = 0;  ///< dated after now
  int backwardTimes = 0;   ///< shots before the one before them: a clock that was set back
  std::vector<TableLeftOut> leftOut;

  bool operator==(const DataQuality&) const = default;
};

/// all: one entry for each width, as byPocketWidth gives them; the first is the one that is reported.
/// now_ms: UTC, since 1970.
[[nodiscard]] DataQuality dataQuality(const std::vector<PlayerHistory>& all, std::int64_t now_ms);

}  // namespace ferrule
