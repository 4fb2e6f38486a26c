// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "app/words/ruling_words.h"
#include "core/rules/ruling_text.h"

namespace ferrule {

/// What a referee would say, in the user's language: "Foul: the 10 was met first. Ben is at the table, cue ball in
/// hand."
[[nodiscard]] QString rulingSentence(const RuledShot& ruled, const SeatNames& names = {});
/// What the ruling rests on, one line each: "world rules 2016, 6.2: The cue ball meets the 10".
/// events: of the shot that was ruled.
[[nodiscard]] QStringList rulingEvidence(const RuledShot& ruled, const std::vector<ShotEvent>& events);
/// What waits for a person, one question a line; empty when nothing does.
[[nodiscard]] QStringList rulingQuestions(const RuledShot& ruled);

}  // namespace ferrule
