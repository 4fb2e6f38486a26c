// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/ball_state.h"

namespace ferrule {

/// A ball that leaves the cloth more slowly than this stays on it: the hop would be 0.13 mm high.
inline constexpr double kLeastHop_mps = 0.05;

/// A ball that meets the slate with a downward speed: it leaves with slateRestitution times that speed, or stays down
/// below kLeastHop_mps, and the cloth rubs with min(μs P, (2/7) m |u|) against the slip. A ball that already rises is
/// only held down when it rises too slowly.
/// Source: impulse with Coulomb friction on a solid sphere, for example Garwin, Am. J. Phys. 37, 88 (1969) for the
/// sticking limit 2/7.
void meetSlate(BallState& state, const PhysicsParameters& parameters);

}  // namespace ferrule
