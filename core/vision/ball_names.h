// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/vision/ball_colour.h"

namespace ferrule {

/// Gives each ball a name of its own so that all names together are likeliest.
/// evidence: one a ball, log-likelihoods. At most 16 balls get one; the least likely go without.
[[nodiscard]] std::vector<std::optional<BallName>> nameBalls(std::span<const NameLikelihood> evidence);

}  // namespace ferrule
