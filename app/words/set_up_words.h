// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "app/words/numbers.h"
#include "core/drills/set_up_check.h"

namespace ferrule {

/// How far each ball is from its place and where to move it, a line each, and what else is amiss; the last line says
/// whether a try may begin.
[[nodiscard]] QStringList setUpSentences(const SetUpCheck& check, const Numbers& numbers);

}  // namespace ferrule
