// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/words/ruling_words.h"
#include "core/rules/answers.h"

namespace ferrule {

/// What a key or button says that gives this answer: "Yes", "Foot-left pocket", "Ada has solids".
/// shooter: of the shot that is asked about.
[[nodiscard]] QString answerWords(const DoubtAnswer& answer, Seat shooter, const SeatNames& names);

}  // namespace ferrule
