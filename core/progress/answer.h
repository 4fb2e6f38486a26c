// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"
#include "core/progress/interval.h"

namespace ferrule {

/// Why a measure gives no number.
enum class ShortageKind {
  Shots,      ///< too few usable shots: have, need
  Sessions,   ///< too few usable sessions: have, need
  NoPlan,     ///< nobody said beforehand what the shot was to do
  NoRepeats,  ///< nor was any set-up repeated often enough to stand in for that
  NoTimes,    ///< the films have no clock
  NoValues,   ///< what it rests on was never recorded (a ruling, a suggestion)
};

struct Shortage {
  ShortageKind kind = ShortageKind::Shots;
  int have = 0;
  int need = 0;

  bool operator==(const Shortage&) const = default;
};

/// A number, or what is missing for one: never an empty number.
template <class T>
using Answer = tl::expected<T, Shortage>;

[[nodiscard]] inline tl::unexpected<Shortage> shortOf(ShortageKind kind, int have = 0, int need = 0) {
  return tl::make_unexpected(Shortage{kind, have, need});
}

/// A number with its 95 % interval and what it rests on.
struct Estimate {
  double value = 0.0;
  Interval interval;
  int shots = 0;
  int sessions = 0;
  bool clustered = false;  ///< the interval allows for days that differ; else shots were taken as independent

  bool operator==(const Estimate&) const = default;
};

/// Below this a share is not shown: its interval is wider than half of all there is. 10: common practice, no source.
inline constexpr int kFewestForShare = 10;
/// Below this a spread is not shown: its own interval is about a third of it to either side.
inline constexpr int kFewestForSpread = 20;
/// A session counts as a point of a series from this many usable shots on.
inline constexpr int kFewestInSession = 8;
/// Resampling fewer sessions than this tells next to nothing about how days differ.
inline constexpr int kFewestSessions = 5;
/// With fewer, chance alone draws a line through them too often for the tests of findings.h ever to agree.
inline constexpr int kFewestForTrend = 6;

}  // namespace ferrule
