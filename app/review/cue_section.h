// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <optional>
#include <vector>

#include "app/review/shot_words.h"
#include "app/words/numbers.h"
#include "core/cue/cue_reading.h"

/// The cue before the strike, as the detail panel shows it beside the delivery.
namespace ferrule {

/// What the record keeps of the cue with a shot; nothing where it was not seen.
[[nodiscard]] std::optional<CueReading> cueOf(const StoredShot& shot);

/// Where the cue pointed, the way the ball went and what lies between, then what else was seen of the cue. after: of
/// the delivery.
[[nodiscard]] std::vector<ValueLine> cueRows(const CueReading& reading, const std::optional<Measured>& after,
                                             const Numbers& numbers);
/// What it was read from, and what stood in the way.
[[nodiscard]] QStringList cueNotes(const CueReading& reading, const Numbers& numbers);

}  // namespace ferrule
