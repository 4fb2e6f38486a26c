// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/progress/sample.h"

/// How often chance alone would show as much. All by shuffling what chance could have shuffled, so that no law of
/// distribution is assumed; the observed order counts as one of the shuffles (Phipson and Smyth 2010, Stat. Appl.
/// Genet. Mol. Biol. 9, 39), so no answer is ever 0.
namespace ferrule {

/// One session as a point of a series.
struct SeriesPoint {
  double when = 0.0;  ///< any unit; here weeks
  double value = 0.0;
  double weight = 1.0;  ///< > 0

  bool operator==(const SeriesPoint&) const = default;
};

/// Weighted least squares: value = level + slope * (when - mean of when).
struct Line {
  double slope = 0.0;
  double level = 0.0;
  double middle = 0.0;  ///< weighted mean of when

  [[nodiscard]] double at(double when) const { return level + slope * (when - middle); }
  bool operator==(const Line&) const = default;
};

/// Slope 0 where all points share one time. points not empty.
[[nodiscard]] Line lineThrough(std::span<const SeriesPoint> points);
/// Two-sided: sessions' values (with their weights) are shuffled over the times.
[[nodiscard]] double chanceOfSlope(std::span<const SeriesPoint> points, const Resampling& shuffling);

/// One session's difference with its weight.
struct Difference {
  double value = 0.0;
  double weight = 1.0;

  bool operator==(const Difference&) const = default;
};

[[nodiscard]] double weightedMean(std::span<const Difference> differences);
/// Two-sided, of a mean other than 0: each session's sign is as likely the other one.
[[nodiscard]] double chanceOfMean(std::span<const Difference> differences, const Resampling& shuffling);
/// Two-sided, of two groups of sessions with different means: sessions are shuffled between the groups.
[[nodiscard]] double chanceOfGap(std::span<const Difference> some, std::span<const Difference> others,
                                 const Resampling& shuffling);

/// Which of several chances stand together at 5 % in all: with k of them the least must be below 5 % / k, the next
/// below 5 % / (k - 1), and so on until one fails. Source: Holm 1979, Scand. J. Stat. 6, 65.
[[nodiscard]] std::vector<bool> standing(std::span<const double> chances, double level = 1.0 - kConfidence);

}  // namespace ferrule
