// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "core/planner/planner.h"

namespace ferrule::testing {

/// A position with the idea that a good player would have there. Common practice, no source.
struct FrozenPosition {
  const char* name = "";
  PlayerLevel level = PlayerLevel::Club;
  Situation situation;
  std::function<bool(const RankedPlan&)> isRight;
};

[[nodiscard]] const std::vector<FrozenPosition>& frozenPositions();

}  // namespace ferrule::testing
