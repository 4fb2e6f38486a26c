// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "tests/bench/accuracy/table_printer.h"

namespace ferrule::bench {

/// Reads this many simulated shots (numbers from 0) as films are read: a group for each kind of stroke, then all.
/// FERRULE_BENCH_SHOTS in the environment, if set, names a file that gets a line a shot.
[[nodiscard]] std::vector<SimulatedScore> scoreSimulatedShots(long count);

}  // namespace ferrule::bench
