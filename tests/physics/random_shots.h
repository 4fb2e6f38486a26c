// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/base/random.h"
#include "core/physics/event_time.h"
#include "core/physics/simulator.h"

namespace ferrule::testing {

/// One to sixteen balls at places without overlap, some of them frozen together or on a cushion, and any strike a cue
/// can make: up to 12 m/s, any tip point within the miscue limit, elevation up to 60 degrees.
[[nodiscard]] std::vector<BallState> randomShot(const Simulator& table, Random& random);

/// Plays the shot and says which law it breaks: energy rises, balls overlap by more than 1 µm, a ball is beyond a
/// cushion, the shot does not end, a second run differs, or a mirrored or turned one does. Empty when none.
[[nodiscard]] std::string lawBrokenBy(const Simulator& table, const std::vector<BallState>& balls);

}  // namespace ferrule::testing
