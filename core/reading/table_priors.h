// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/physics/fingerprint.h"
#include "core/reading/delivery_problem.h"

namespace ferrule {

/// What is known of a table before a shot is read: the literature's values and spreads, and in their place those of the
/// table's fingerprint where its shots determined them. A cloth is not the same on every day and at every place, so
/// that no spread becomes narrower than a fifth of the literature's. Common practice, no source.
[[nodiscard]] DeliveryPriors tablePriors(const PhysicsParameters& literature,
                                         const std::optional<Fingerprint>& fingerprint);

}  // namespace ferrule
