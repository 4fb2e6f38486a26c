// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>

#include "app/words/numbers.h"
#include "core/record/consent.h"

namespace ferrule {

class PeopleWords {
  Q_DECLARE_TR_FUNCTIONS(PeopleWords)
};

/// "Being filmed".
[[nodiscard]] QString scopeWords(ConsentScope scope);
/// Who gave or withdrew it: "Ada's mother (parent or guardian)".
[[nodiscard]] QString giverWords(const ConsentEntry& entry);
/// What follows while consent is not there.
[[nodiscard]] QString withoutConsentWords(ConsentScope scope);
/// How consent stands and what follows from it, as sentences.
[[nodiscard]] QString consentSentence(const ConsentState& state, ConsentScope scope, const Numbers& numbers);
/// The scopes that matter for a person: film of a minor for minors, else film.
[[nodiscard]] std::vector<ConsentScope> scopesFor(const Player& player);
[[nodiscard]] QString dayWords(UtcMilliseconds time, const Numbers& numbers);

}  // namespace ferrule
