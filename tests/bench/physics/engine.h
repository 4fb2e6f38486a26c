// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/physics/simulation.h"
#include "tests/bench/physics/scenes.h"

namespace ferrule::bench {

/// How a scene ended in the rigid-body engine.
struct EngineRun {
  std::vector<FinalBall> after;  ///< in the order of the scene's balls
  double time_s = 0.0;           ///< of one core, for the stepping alone
  bool ended = false;            ///< false: more than the allowed time was needed
};

/// Plays a scene in a general-purpose rigid-body engine (Open Dynamics Engine), in fixed steps: spheres on a plane,
/// capsules for the noses and facings, Coulomb friction with its first direction along the slip, the same coefficients.
/// The engine knows no rolling resistance of this form and no decay of sidespin; both are put in as outer forces. A
/// ball whose centre is over a hole is taken away. Balls that rest are put to sleep, which spares the engine their
/// contacts.
[[nodiscard]] EngineRun playInEngine(const Table& table, const PhysicsParameters& parameters, const Scene& scene,
                                     double step_s, double mostTime_s);

}  // namespace ferrule::bench
