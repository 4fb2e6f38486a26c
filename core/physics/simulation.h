// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/physics/motion.h"
#include "core/table/shot.h"

namespace ferrule {

/// Where a ball ended.
enum class BallFate { OnTable, Pocketed, OffTable };

/// One ball when everything rests.
struct FinalBall {
  BallName ball;
  BallFate fate = BallFate::OnTable;
  TablePoint position;               ///< OnTable: where it rests; else where it left
  std::optional<PocketName> pocket;  ///< Pocketed

  bool operator==(const FinalBall&) const = default;
};

/// One ball's whole way: motions that follow each other without gap, the last one without end.
struct BallPath {
  BallName ball;
  std::vector<Motion> motions;

  /// The ball at any time from 0; before the first motion and after the last the ends hold.
  [[nodiscard]] BallState stateAt(double time_s) const;
  [[nodiscard]] const Motion& motionAt(double time_s) const;
  bool operator==(const BallPath&) const = default;
};

/// Why a simulation stopped.
enum class SimulationEnd {
  AtRest,      ///< every ball rests or is gone
  TimeLimit,   ///< the asked-for time is over
  EventLimit,  ///< more events than any shot has: the result is not usable
};

/// What came out.
struct Simulation {
  std::vector<ShotEvent> events;  ///< in time order; `ball` of a ball event is the faster of the two
  std::vector<FinalBall> after;   ///< in the order of the balls that were given
  std::vector<BallPath> paths;    ///< in the same order; empty when not asked for
  double duration_s = 0.0;        ///< from the strike until rest
  SimulationEnd end = SimulationEnd::AtRest;
  long steps = 0;  ///< events of all kinds that were worked through, transitions included

  bool operator==(const Simulation&) const = default;
};

/// A number that changes with any bit of the outcome (FNV-1a over the final balls, the events and the duration).
[[nodiscard]] std::uint64_t hashOf(const Simulation& simulation);

/// The balls that went down, in time order, and whether the cue ball was among them.
[[nodiscard]] std::vector<PocketedBall> pocketedIn(const Simulation& simulation);
/// The first ball that the cue ball touched.
[[nodiscard]] std::optional<BallName> firstContactIn(const Simulation& simulation);

}  // namespace ferrule
