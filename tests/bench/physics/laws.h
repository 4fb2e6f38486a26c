// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule::bench {

/// Plays that many random shots with all cores, checks each against the laws of tests/physics/random_shots.h and prints
/// what was broken how often. Returns how many shots broke one.
[[nodiscard]] long printLaws(long shots);

}  // namespace ferrule::bench
