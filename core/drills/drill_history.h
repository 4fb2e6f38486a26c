// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/drills/drill_score.h"

/// A drill over its runs: whether it got better, or whether that is noise.
namespace ferrule {

/// One run as the history needs it.
struct RunShare {
  std::int64_t started_ms = 0;  ///< UTC
  MetShare share;               ///< of all goals together

  bool operator==(const RunShare&) const = default;
};

/// The last run against all before it.
struct HistoryChange {
  double difference = 0.0;  ///< of the shares: last - before
  Interval interval;        ///< 95 %
  bool isReal = false;      ///< the interval leaves out 0
  /// Tries on each side that would tell a difference of this size; nothing when there is none.
  std::optional<int> trialsToTell;

  bool operator==(const HistoryChange&) const = default;
};

struct DrillHistory {
  std::vector<RunShare> runs;           ///< in the order of time
  Answer<Estimate> together;            ///< over all runs, allowing for days that differ
  std::optional<std::size_t> best;      ///< the highest share among runs with enough tries; the later of equal ones
  std::optional<HistoryChange> change;  ///< nothing below kFewestForShare tries on either side
};

/// Errors of together: Shots. runs: in any order; runs of which nothing is known are left out.
[[nodiscard]] DrillHistory historyOf(std::span<const RunShare> runs);

/// Of the difference of two shares, made of tried each: Newcombe's interval from Wilson's two.
///   d - sqrt((p1 - l1)² + (u2 - p2)²),  d + sqrt((u1 - p1)² + (p2 - l2)²)
/// Source: Newcombe 1998, Statistics in Medicine 17, 873, method 10.
[[nodiscard]] Interval differenceInterval(const MetShare& one, const MetShare& other);

}  // namespace ferrule
