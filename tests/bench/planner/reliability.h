// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planner/planner.h"

namespace ferrule::bench {

/// For each level: plans of random positions with the pot chance that the planner states, each played some times with
/// errors that it did not know; predicted against observed rates by tenths, and the Brier score.
void printReliability(const Planner& planner, int shotsOfLevel);

}  // namespace ferrule::bench
