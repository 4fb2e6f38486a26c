// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "app/words/numbers.h"
#include "core/table/asked_delivered.h"

namespace ferrule {

/// The quantities of a strike, in the order in which they are told.
enum class StrikeQuantity { Aim, Speed, Side, Height, Elevation };

/// What a quantity's fit says, one sentence: "Speed: long shots fall 8 % short; single shots scatter by 0.03 m/s." Only
/// what stands out from its uncertainty is called a fault; a hypothesis with evidence, not a verdict.
[[nodiscard]] QString askedSentence(StrikeQuantity quantity, const AskedFit& fit, const Numbers& numbers);

/// Lines of an aligned table: shots, offset, scale, limit and scatter with their 95 % intervals; then a sentence for
/// each quantity. Empty where no quantity has enough shots.
[[nodiscard]] QStringList askedLines(const AskedDelivered& result, const Numbers& numbers);

}  // namespace ferrule
