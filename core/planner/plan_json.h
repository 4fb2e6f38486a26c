// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "core/planner/planner.h"

/// A plan with its chances as a JSON object (suggestion_text.h). For this folder's .cpp files only.
namespace ferrule {

[[nodiscard]] nlohmann::ordered_json jsonFromPlan(const RankedPlan& ranked, const std::string& why);
/// Nothing for anything that jsonFromPlan did not write. Chances come back with the digits that are written.
[[nodiscard]] std::optional<RankedPlan> planFromJson(const nlohmann::ordered_json& object);

}  // namespace ferrule
