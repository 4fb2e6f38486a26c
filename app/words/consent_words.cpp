// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/consent_words.h"

#include <QDateTime>

#include "app/words/joining.h"

namespace ferrule {

QString withoutConsentWords(ConsentScope scope) {
  switch (scope) {
    case ConsentScope::Measuring:
      return PeopleWords::tr("Ask before shots of this person are measured and kept.");
    case ConsentScope::Film:
    case ConsentScope::FilmOfMinor:
      return PeopleWords::tr("No film is kept of this person.");
    case ConsentScope::Sharing:
      return PeopleWords::tr("The report goes to nobody but this person and, for a minor, a parent or guardian.");
  }
  return {};
}

QString dayWords(UtcMilliseconds time, const Numbers& numbers) {
  return numbers.locale().toString(QDateTime::fromMSecsSinceEpoch(time).toLocalTime().date(), QLocale::ShortFormat);
}

QString giverWords(const ConsentEntry& entry) {
  if (entry.by.empty()) return entry.byGuardian ? PeopleWords::tr("a parent or guardian") : PeopleWords::tr("somebody");
  return entry.byGuardian ? PeopleWords::tr("%1 (parent or guardian)").arg(QString::fromStdString(entry.by))
                          : QString::fromStdString(entry.by);
}

QString scopeWords(ConsentScope scope) {
  switch (scope) {
    case ConsentScope::Measuring:
      return PeopleWords::tr("Measured shots");
    case ConsentScope::Film:
      return PeopleWords::tr("Film");
    case ConsentScope::FilmOfMinor:
      return PeopleWords::tr("Film of a minor");
    case ConsentScope::Sharing:
      return PeopleWords::tr("Handing on the report");
  }
  return {};
}

QString consentSentence(const ConsentState& state, ConsentScope scope, const Numbers& numbers) {
  switch (state.consent) {
    case Consent::Given:
      if (state.entry->until) {
        return PeopleWords::tr("Given by %1 on %2, until %3.")
            .arg(giverWords(*state.entry), dayWords(state.entry->from, numbers),
                 dayWords(*state.entry->until - 1, numbers));
      }
      return PeopleWords::tr("Given by %1 on %2, until it is withdrawn.")
          .arg(giverWords(*state.entry), dayWords(state.entry->from, numbers));
    case Consent::Missing:
      return sentencesOf({PeopleWords::tr("Missing."), withoutConsentWords(scope)});
    case Consent::NotByGuardian:
      return sentencesOf({PeopleWords::tr("Given by %1 on %2, but for a minor a parent or guardian must give it.")
                              .arg(giverWords(*state.entry), dayWords(state.entry->from, numbers)),
                          withoutConsentWords(scope)});
    case Consent::Expired:
      return sentencesOf({PeopleWords::tr("Expired on %1.").arg(dayWords(*state.entry->until - 1, numbers)),
                          withoutConsentWords(scope)});
    case Consent::Withdrawn:
      return sentencesOf({PeopleWords::tr("Withdrawn by %1 on %2.")
                              .arg(giverWords(*state.entry), dayWords(state.entry->from, numbers)),
                          withoutConsentWords(scope)});
  }
  return {};
}

std::vector<ConsentScope> scopesFor(const Player& player) {
  return {ConsentScope::Measuring, filmScopeOf(player), ConsentScope::Sharing};
}

}  // namespace ferrule
