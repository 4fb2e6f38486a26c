// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/review/playhead.h"
#include "app/review/review_source.h"
#include "app/words/numbers.h"

namespace ferrule {

/// "12 November 2026, 18:02 · Hall B, table 2 · Nerea, Ivo".
[[nodiscard]] QString sessionWords(const SessionSummary& session, const Numbers& numbers);
/// What the playhead stands on: "3.42 s · image 205 of 4,957 · The cue ball meets the 5", or between events
/// the standard uncertainty of the balls' places. countsFilm: the playhead's
/// images are the whole film's.
[[nodiscard]] QString momentWords(const StoredShot& shot, const Playhead& playhead, bool countsFilm,
                                  const Numbers& numbers);

}  // namespace ferrule
