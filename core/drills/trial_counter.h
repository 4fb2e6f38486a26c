// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/drills/trial.h"

namespace ferrule {

/// Finds the tries at a drill among shots as they come, from a film or live. A try begins with a shot before which the
/// balls stand as a station has them (stationSetUp); it ends when the balls rest, or in a run with the first shot that
/// pots nothing, with a foul, or when nothing is left to pot. Everything else is no try.
class TrialCounter {
 public:
  /// drill: as it is played, mirrored.
  TrialCounter(Drill drill, MeasuredTable measured);

  /// One shot more; the tries that end with it, in order: one that a new set-up breaks off, and its own.
  [[nodiscard]] std::vector<DrillTrial> add(const ShotReading& shot);
  /// No more shots come: the run that is still open.
  [[nodiscard]] std::optional<DrillTrial> finish();

 private:
  [[nodiscard]] bool goesOn(const ShotReading& shot) const;
  [[nodiscard]] bool isOver() const;
  [[nodiscard]] DrillTrial close();

  Drill drill_;
  MeasuredTable measured_;
  std::size_t shots_ = 0;   ///< added so far
  std::size_t trials_ = 0;  ///< ended so far
  std::vector<ShotReading> open_;
  std::size_t firstOpen_ = 0;
  std::size_t station_ = 0;  ///< of the open try
  SetUpCheck check_;         ///< of the open try
};

/// All tries among the shots.
[[nodiscard]] std::vector<DrillTrial> countTrials(const Drill& drill, const MeasuredTable& measured,
                                                  std::span<const ShotReading> shots);

}  // namespace ferrule
