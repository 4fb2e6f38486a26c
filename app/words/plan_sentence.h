// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/planner/shot_review.h"

namespace ferrule {

/// A plan in a few words: "5 to foot-left", "bank 5 to side-right off 1 cushion", "safety off the 3".
[[nodiscard]] QString planWords(const Plan& plan);
/// Why a plan stands where it stands, in one sentence made of its numbers: the first against the second, the others
/// against the first.
[[nodiscard]] QString planSentence(const Suggestion& suggestion, std::size_t index);
/// The sentences of all plans, for the file's form (core/planner/suggestion_text.h).
[[nodiscard]] std::vector<std::string> planSentences(const Suggestion& suggestion);

/// Suggested against taken in one sentence of the numbers: "2 to side-left was better than 1 to foot-left: pot 71 %
/// against 64 %, the leave gives the 5 a shot 9 times in 10."
[[nodiscard]] QString reviewSentence(const ShotReview& review);

}  // namespace ferrule
