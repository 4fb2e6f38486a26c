// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "app/words/numbers.h"

namespace ferrule {

/// How a tried pot was missed and what brought it there, in the trade's words: "Missed thick by 1.2° (18 mm at the
/// pocket). The aim was 2.1° thin of a full ghost ball; throw of the cut brought it 3.0° back thick." Only parts that
/// stand out from their uncertainty are named, the largest first; a hypothesis with evidence, not a verdict. Empty
/// without a line error.
[[nodiscard]] QString missSentence(const Target& target, const std::optional<MissAccount>& account,
                                   const Numbers& numbers);

/// Why a part of the strike is not given: "no cushion, no curve: side spin cannot be seen".
[[nodiscard]] QString notShownWords(NotShown reason);

/// What makes a reading less than clean: "the film ends before every ball rests".
[[nodiscard]] QString flagWords(ShotFlag flag);

}  // namespace ferrule
