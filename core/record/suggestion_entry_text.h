// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/record/record_values.h"

/// What stands beside a shot as one text, so that a correction can keep it.
namespace ferrule {

/// {"planner", "shown", "choice_loss", "delivery_loss", "content": text}
[[nodiscard]] std::string keptSuggestionText(const SuggestionEntry& suggestion);
/// Nothing for anything that keptSuggestionText did not write.
[[nodiscard]] std::optional<SuggestionEntry> keptSuggestionFromText(std::string_view text);

}  // namespace ferrule
