// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "app/session/suggestion_service.h"
#include "app/words/numbers.h"
#include "app/words/ruling_words.h"
#include "core/measure/hand_session.h"

/// What the Session place says.
namespace ferrule {

[[nodiscard]] SeatNames seatNamesOf(const HandTerms& terms);
/// Who is at the table, with what: "Ada is at the table and plays solids." Without a game: "Practice".
[[nodiscard]] QString turnWords(const HandSession& session);
/// The same of a game in a given state.
[[nodiscard]] QString turnWords(const GameState& state, const SeatNames& names);
/// What is played for: "The 3 to foot-left, cut 32°", or what to choose.
[[nodiscard]] QString aimWords(const HandSession& session, std::optional<BallName> ball,
                               std::optional<PocketName> pocket, const Numbers& numbers);
/// One line of the list of shots: "4  Ada: 3 to foot-left, made".
[[nodiscard]] QString loggedWords(const HandSession& session, std::size_t shot);
/// What the referee says of the last shot; empty before the first one, and without a game.
[[nodiscard]] QString lastRulingWords(const HandSession& session);

/// One row of the list of plans: "2  3 to foot-left, 1.6 m/s, 64 %".
[[nodiscard]] QString planRowWords(const RankedPlan& plan, const Numbers& numbers);
/// How hard a pot is for a player with such a chance: easy from nine in ten, fair from seven, hard from four.
[[nodiscard]] QString difficultyWords(double potChance);
/// The plan that is drawn: why it stands where it stands, how hard it is, and for whom.
[[nodiscard]] QString shownPlanWords(const SuggestionAnswer& answer, const PlayedPlan& shown, const Numbers& numbers);

}  // namespace ferrule
