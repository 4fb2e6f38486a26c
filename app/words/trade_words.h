// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/words/numbers.h"
#include "core/record/record_values.h"

/// The trade's names in the user's language.
namespace ferrule {

/// As the first words of a sentence.
[[nodiscard]] QString atStart(QString words);
/// "cue ball", "the 3".
[[nodiscard]] QString ballWords(BallName ball);
/// As the first word of a sentence.
[[nodiscard]] QString ballWordsAtStart(BallName ball);
/// "cue", "3": for narrow places.
[[nodiscard]] QString ballShort(BallName ball);
/// "foot-left".
[[nodiscard]] QString pocketWords(PocketName pocket);
/// "the foot cushion".
[[nodiscard]] QString cushionWords(CushionName cushion);
/// "made", "missed", "safety", "scratch", "foul", "break".
[[nodiscard]] QString outcomeWords(Outcome outcome);
/// "certain", "likely", "please check".
[[nodiscard]] QString verdictWords(Verdict verdict);
/// "eight-ball"; an unknown game is shown as it is written.
[[nodiscard]] QString gameWords(const std::string& game);
/// What happened, without its time: "The cue ball meets the 3".
[[nodiscard]] QString eventWords(const ShotEvent& event);
/// What was tried, for a narrow row: "3 to foot-left", "break", "first contact 5".
[[nodiscard]] QString shotWords(Outcome outcome, const std::optional<Target>& target,
                                const std::vector<PocketedBall>& pocketed, const std::optional<BallName>& firstContact);
[[nodiscard]] QString shotWords(const ShotSummary& shot);
/// What came of it too: "3 to foot-left, missed thick", "break; pocketed: 5, 9".
[[nodiscard]] QString happenedWords(const ShotReading& shot);
/// The shot as a heading: "Shot 14: the 5 to foot-left, missed thick".
[[nodiscard]] QString shotHeading(const ShotReading& shot);
/// The side that a cut missed on: "thin" (cut too much), "thick".
[[nodiscard]] QString missWords(MissSide side);

/// Where the tip struck, in words: "at about half past three, 3.7 mm off centre", or "at the centre, within what can be
/// seen". side and height in ball radii.
[[nodiscard]] QString tipWords(const Measured& side, const Measured& height, double ballRadius_m,
                               const Numbers& numbers);

}  // namespace ferrule
