// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/picture/planned_ways.h"
#include "core/planner/suggestion_text.h"
#include "core/record/record_values.h"

namespace ferrule {

/// What was suggested before a recorded shot, as it would have come out.
struct SuggestedShot {
  KeptSuggestion kept;
  PlannedWays ways;  ///< of the first plan
};

/// Nothing where nothing readable is kept beside the shot. The table's cloth is the literature's: the ways are a
/// picture, the kept numbers are what was worked out.
[[nodiscard]] std::optional<SuggestedShot> suggestedShot(const StoredShot& shot, const MeasuredTable& measured);

}  // namespace ferrule
