// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>

#include "app/words/numbers.h"
#include "core/record/consent.h"

namespace ferrule {

class PeopleWords {
  Q_DECLARE_TR_FUNCTIONS(PeopleWords)
};

[[nodiscard]] QString handednessWords(Handedness handedness);
/// "Being filmed".
[[nodiscard]] QString scopeWords(ConsentScope scope);
/// How consent stands and what follows from it, as sentences.
[[nodiscard]] QString consentSentence(const ConsentState& state, ConsentScope scope, const Numbers& numbers);
/// One line of the ledger.
[[nodiscard]] QString ledgerLine(const ConsentEntry& entry, bool struck, const Numbers& numbers);
/// The scopes that matter for a person: film of a minor for minors, else film.
[[nodiscard]] std::vector<ConsentScope> scopesFor(const Player& player);
/// What the list says beside a name: guest, or what may not be done; empty when all is well.
[[nodiscard]] QString markWords(const PersonRow& row, UtcMilliseconds at);
/// "12 sessions, 340 shots, last played on ...".
[[nodiscard]] QString playedWords(const Person& person, const Numbers& numbers);
/// "Cleo, 2 March 2026"; what is not known is left out.
[[nodiscard]] QString authorWords(const Note& note, const Numbers& numbers);
[[nodiscard]] QString dayWords(UtcMilliseconds time, const Numbers& numbers);

}  // namespace ferrule
