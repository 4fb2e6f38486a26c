// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ferrule::bench {

/// Plays the same scenes in a general-purpose rigid-body engine, if it was found when this was built, and prints a line
/// for each: the step at which the engine has settled, its time, the simulator's, and how many times longer the engine
/// takes.
void printEngineComparison();

}  // namespace ferrule::bench
