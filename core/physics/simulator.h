// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/base/error.h"
#include "core/physics/bed.h"
#include "core/physics/simulation.h"
#include "core/physics/strike.h"

namespace ferrule {

/// What a caller wants of one run.
struct SimulationOptions {
  double mostTime_s = 600.0;  ///< simulated time after which to stop
  long mostSteps = 200000;    ///< events after which to give up; a hard break has some hundreds
  bool keepPaths = true;      ///< false saves time when only the outcome counts
  /// Balls that overlap each other or a cushion by no more than this are pushed apart first: a camera is not exact.
  double mostOverlap_m = 0.002;
};

/// Plays shots on one table: from event to event, exactly in between.
///
/// Deterministic: the same input gives the same bits, mirrored input mirrored output, and the order in which balls are
/// given does not change what happens. Holds nothing of a shot; one simulator serves many threads.
///
/// Assumed: equal rigid spheres, a level cloth, sharp nose points, rails as high as their noses; a ball that comes down
/// on a rail leaves the table; a ball over a pocket's hole that has sunk by a tenth of its radius is down (common
/// practice, no source).
class Simulator {
 public:
  /// Errors: FieldInvalid for parameters without sense.
  [[nodiscard]] static Result<Simulator> create(const Table& table, const PhysicsParameters& parameters);

  /// Every ball as it is given, moving or not. Errors: FieldInvalid (a number that is not finite, or a ball twice),
  /// BallsOverlap, BallOutsideTable.
  [[nodiscard]] Result<Simulation> run(std::span<const BallState> balls, const SimulationOptions& options = {}) const;

  /// A strike on the cue ball of a position. Errors: as run() and struckBall(), NotFound without a cue ball.
  [[nodiscard]] Result<Simulation> shoot(const Position& before, const Strike& strike,
                                         const SimulationOptions& options = {}) const;

  [[nodiscard]] const PhysicsParameters& parameters() const { return parameters_; }
  [[nodiscard]] const Bed& bed() const { return bed_; }

 private:
  Simulator(const Bed& bed, const PhysicsParameters& parameters) : bed_(bed), parameters_(parameters) {}

  Bed bed_;
  PhysicsParameters parameters_;
};

}  // namespace ferrule
