// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>

#include "core/physics/simulator.h"
#include "core/planner/plan.h"

namespace ferrule {

/// The way of a shot whose aim is looked for: which balls take part, and where the target must go at last.
struct ShotWay {
  Position balls;  ///< those that take part, the cue ball included
  BallName target;
  PlanKind kind = PlanKind::Direct;
  BallName first;    ///< the ball that the cue ball must meet first
  int cushions = 0;  ///< bank: of the target after it was hit; kick: of the cue ball before it meets the target
  /// The direction that the target must take from where it starts its last leg.
  std::function<double(TablePoint from)> wanted_rad;
};

/// By how much the target's last leg misses the wanted direction when this strike is played among the balls of the way,
/// + counter-clockwise. Throw, squirt, swerve and the target's own slide are in it, for it is played by the simulator.
/// Nothing when the balls do not meet as meant.
[[nodiscard]] std::optional<double> legError(const Simulator& simulator, const ShotWay& way, const Strike& strike);

/// The aim for which the target's last leg is right, found from a first guess by the secant rule.
/// strike: its aim is the guess. slope: of the leg's direction over the aim, as geometry has it.
/// Nothing when it does not converge within a few simulations, or such a strike is not possible.
[[nodiscard]] std::optional<Strike> solveAim(const Simulator& simulator, const ShotWay& way, Strike strike,
                                             double slope);

}  // namespace ferrule
