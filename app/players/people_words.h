// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/words/consent_words.h"

namespace ferrule {

[[nodiscard]] QString handednessWords(Handedness handedness);
/// One line of the ledger.
[[nodiscard]] QString ledgerLine(const ConsentEntry& entry, bool struck, const Numbers& numbers);
/// What the list says beside a name: guest, or what may not be done; empty when all is well.
[[nodiscard]] QString markWords(const PersonRow& row, UtcMilliseconds at);
/// "12 sessions, 340 shots, last played on ...".
[[nodiscard]] QString playedWords(const Person& person, const Numbers& numbers);
/// "Cleo, 2 March 2026"; what is not known is left out.
[[nodiscard]] QString authorWords(const Note& note, const Numbers& numbers);

}  // namespace ferrule
