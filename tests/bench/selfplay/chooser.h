// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

#include "core/planner/planner.h"

namespace ferrule::bench {

enum class ChooserKind {
  Search,  ///< the planner
  Greedy,  ///< the likeliest pot at a plain speed and centre ball, whatever it leaves; without one a legal hit
};

/// Who chooses plans.
struct Chooser {
  ChooserKind kind = ChooserKind::Search;
  long simulations = 2500;  ///< of a search
  bool deeper = true;
};

/// Nothing where the position has no legal shot.
[[nodiscard]] std::optional<Plan> choose(const Chooser& chooser, const Planner& planner, const Situation& situation,
                                         const Scatter& scatter, std::uint64_t seed);

}  // namespace ferrule::bench
