// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/physics_parameters.h"
#include "core/planner/scatter_estimate.h"
#include "core/record/record.h"

namespace ferrule {

/// A spread from so many shots is known to 1 / sqrt(2 n) = 2 %. Source: JCGM 100:2008, E.4.3.
inline constexpr std::size_t kMostScatterShots = 1000;

/// What the record knows of a player's scatter. Aim: of every shot with a target and a measured aim, the aim that would
/// have sent the target to the middle of its pocket with the delivered speed and tip point, against the delivered one.
/// Speed and tip point: of every position that was played again and again, each delivery against the player's own mean
/// (core/progress/set_ups.h), since nobody wrote down what was asked; without such repeats they keep the prior.
///
/// The last kMostScatterShots shots that tell something count: a player changes, and more of them would move the
/// estimate by less than its own uncertainty.
///
/// Shots that were misread as pots would widen the aim: those more than 0.2 rad off are left out.
/// parameters: of cloth and balls where the session's table has no fingerprint. Errors: as Record, NotFound (subject:
/// the player) where there is no such player.
[[nodiscard]] Result<ScatterEstimate> playerScatter(Record& record, const std::string& player, const Scatter& prior,
                                                    const PhysicsParameters& parameters);

}  // namespace ferrule
