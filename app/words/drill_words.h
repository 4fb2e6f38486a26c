// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "app/words/numbers.h"
#include "core/drills/drill_history.h"

/// Drills in the user's language.
namespace ferrule {

/// A built-in drill's name, or what a person called it.
[[nodiscard]] QString drillTitle(const Drill& drill);
/// What it is for and how it is played; a person's own text as it stands.
[[nodiscard]] QString drillText(const Drill& drill);
/// A tag of ours in the user's language, another one as it is written.
[[nodiscard]] QString tagWords(const std::string& tag);
/// What to heed before a drill with this caution is set up.
[[nodiscard]] QString cautionSentence(DrillCaution caution);

/// What tells a station from the others: "cut 30° to the left", "over 1 cushion"; empty where nothing does.
[[nodiscard]] QString stationWords(const DrillStation& station, const MeasuredTable& measured, const Numbers& numbers);
/// What a try is to bring about: "the 1 to foot-left", "the cue ball rests in the zone".
[[nodiscard]] QString goalWords(const DrillGoal& goal, const Numbers& numbers);
/// A goal's figure in its unit: "35 mm outside", "cut 22°", "3 balls"; empty for a goal without one.
[[nodiscard]] QString figureWords(GoalKind kind, double figure, const Numbers& numbers);
/// Where to put a ball: "the 1: 6 diamonds along, 2 across (635 mm from the foot cushion, 635 mm from the right)".
[[nodiscard]] QString placeSentence(const BallAt& ball, const MeasuredTable& measured, const Numbers& numbers);

/// "7 of 10: 70 %, between 40 and 89 %"; below kFewestForShare "3 of 4, not enough yet for a share".
[[nodiscard]] QString shareWords(const MetShare& share, const Numbers& numbers);
/// Whether the last run differs from those before, or what is missing to tell.
[[nodiscard]] QString changeSentence(const DrillHistory& history, const Numbers& numbers);
/// What keeps a drill from being played, and what to do.
[[nodiscard]] QString faultSentence(const DrillFinding& finding);

}  // namespace ferrule
