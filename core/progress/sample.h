// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "core/progress/answer.h"

/// Numbers by session, and what can honestly be said of them. Shots of one day are alike (form, table, warm-up), so
/// intervals come from drawing whole sessions again, never single shots.
namespace ferrule {

/// One number from one shot.
struct Observation {
  std::size_t session = 0;
  double value = 0.0;
  std::optional<double> minutes;  ///< since the session's first shot

  bool operator==(const Observation&) const = default;
};

/// What mean and spread need of one session.
struct SessionSum {
  std::size_t session = 0;
  double count = 0.0;
  double sum = 0.0;
  double squares = 0.0;

  [[nodiscard]] double mean() const { return sum / count; }
  /// Sample standard deviation; count >= 2.
  [[nodiscard]] double spread() const;
  bool operator==(const SessionSum&) const = default;
};

/// In the order of sessions; sessions without an observation are left out.
[[nodiscard]] std::vector<SessionSum> bySession(std::span<const Observation> observations);
/// All sessions thrown together.
[[nodiscard]] SessionSum total(std::span<const SessionSum> sums);

/// A session's place among those that are drawn from.
using DrawnSession = std::uint32_t;

/// Which sessions each draw takes, kept: over many sessions the drawing costs more than what is asked of the draws, and
/// the measures of one report ask of the same ones. Not for two threads at once.
class SessionDraws {
 public:
  /// draws times sessions places below sessions, draw by draw; valid until the next call.
  [[nodiscard]] std::span<const DrawnSession> of(std::size_t sessions, std::uint64_t seed, int draws);

 private:
  struct Kept {
    std::size_t sessions = 0;
    std::uint64_t seed = 0;
    int draws = 0;
    std::vector<DrawnSession> places;
  };
  std::vector<Kept> kept_;  ///< the last ones
};

/// How often and from which seed numbers are drawn again. The same seed gives the same digits, kept or not.
struct Resampling {
  std::uint64_t seed = 1;
  int draws = 999;
  std::shared_ptr<SessionDraws> kept = {};  ///< for further questions; nothing: drawn anew for each

  bool operator==(const Resampling& other) const { return seed == other.seed && draws == other.draws; }
};

/// The interval of a statistic of sessions: sessions are drawn with replacement, the statistic is worked out anew, and
/// its percentiles are taken a little outside the nominal ones, by as much as Student's distribution is wider than the
/// normal one at this number of sessions. statistic may give nothing for a draw (such as one without a shot).
/// Sources: Efron and Tibshirani, An introduction to the bootstrap, 1993; Hesterberg 2015, Am. Statistician 69, 371
/// (expanded percentiles).
[[nodiscard]] std::optional<Interval> sessionInterval(
    std::size_t sessions, const std::function<std::optional<double>(std::span<const DrawnSession>)>& statistic,
    const Resampling& resampling);
/// The same of several statistics of each draw, which are written into values. Empty where sessionInterval gives
/// nothing.
[[nodiscard]] std::vector<Interval> sessionIntervals(
    std::size_t sessions, std::size_t statistics,
    const std::function<bool(std::span<const DrawnSession> chosen, std::span<double> values)>& write,
    const Resampling& resampling);

/// Of the mean of all observations. Below kFewestSessions sessions Student's interval over shots, marked as such.
/// Errors: Shots (fewer than kFewestForShare).
[[nodiscard]] Answer<Estimate> meanOf(std::span<const SessionSum> sums, const Resampling& resampling);
/// Of the standard deviation of all observations about their common mean. Below kFewestSessions sessions the normal
/// sample's interval. Errors: Shots (fewer than kFewestForSpread).
[[nodiscard]] Answer<Estimate> spreadOf(std::span<const SessionSum> sums, const Resampling& resampling);

/// Of a share; values are 0 or 1. Wilson's interval with the number of shots divided by the design effect
///   deff = max(1, (S/(S-1)) sum_s (y_s - p n_s)2 / (n p (1-p)))
/// from kFewestSessions sessions S on (y_s made of n_s in session s). Errors: Shots (fewer than kFewestForShare).
/// Source: Korn and Graubard 1998, Survey Methodology 24, 193.
[[nodiscard]] Answer<Estimate> shareOf(std::span<const SessionSum> sums);

}  // namespace ferrule
