// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <condition_variable>
#include <deque>
#include <mutex>
#include <optional>

#include "core/base/progress.h"
#include "core/measure/reading_source.h"
#include "core/table/measured_table.h"
#include "core/vision/film_check.h"

namespace ferrule {

/// One self-check of a rig while it is in use.
struct LiveCheckReport {
  double time_s = 0.0;  ///< film time of the last picture that was looked at
  Result<FilmCheck> check;
};

/// Asks the pictures of a session, while it runs, whether the rig that holds still belongs to them: with the first
/// seconds, every five minutes after that, and whenever a person asks.
///
/// One thread offers pictures and never waits; another one works the checks out.
class LiveCheck {
 public:
  static constexpr double kBetweenChecks_s = 300.0;

  explicit LiveCheck(MeasuredTable measured) : measured_(std::move(measured)) {}

  /// A picture with the rig under which it was read; times rise. Most calls return at once.
  void offer(const KeptPicture& kept, double time_s);
  /// The next check begins with the next picture.
  void askNow();
  /// No more pictures come.
  void close();

  /// Waits for the pictures of the next check and works it out. Nothing once it was closed, or a stop is asked for.
  /// A check that the camera's move broke off begins anew under the new rig. What was gathered when it is closed is
  /// still checked, if it is enough.
  [[nodiscard]] std::optional<LiveCheckReport> next(const JobControl& job);

 private:
  struct Look {
    KeptPicture kept;
    double time_s = 0.0;
  };

  [[nodiscard]] LiveCheckReport checked(const std::vector<Look>& looks, const JobControl& job) const;

  const MeasuredTable measured_;
  std::mutex mutex_;
  std::condition_variable_any changed_;
  std::vector<Look> looks_;                 ///< of the check that is being gathered
  std::optional<std::vector<Look>> whole_;  ///< waits to be worked out
  std::optional<double> next_s_;            ///< when the next check begins; nothing: with the next picture
  bool closed_ = false;
};

}  // namespace ferrule
