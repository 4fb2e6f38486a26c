// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/planner/planner.h"

namespace ferrule::bench {

/// When the first ranked list and the last one are there for 15 balls, by number of cores; whole shots per second.
void printTiming(const Planner& planner);

}  // namespace ferrule::bench
