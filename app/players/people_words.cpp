// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/people_words.h"

#include <QDateTime>

#include "app/words/joining.h"

namespace ferrule {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

QString giver(const ConsentEntry& entry) {
  if (entry.by.empty()) return entry.byGuardian ? PeopleWords::tr("a parent or guardian") : PeopleWords::tr("somebody");
  return entry.byGuardian ? PeopleWords::tr("%1 (parent or guardian)").arg(text(entry.by)) : text(entry.by);
}

/// What follows while consent is not there.
QString consequence(ConsentScope scope) {
  switch (scope) {
    case ConsentScope::Measuring:
      return PeopleWords::tr("Ask before shots of this person are measured and kept.");
    case ConsentScope::Film:
    case ConsentScope::FilmOfMinor:
      return PeopleWords::tr("No film is kept of this person.");
    case ConsentScope::Sharing:
      return PeopleWords::tr("The report goes to nobody but this person.");
  }
  return {};
}

}  // namespace

QString dayWords(UtcMilliseconds time, const Numbers& numbers) {
  return numbers.locale().toString(QDateTime::fromMSecsSinceEpoch(time).toLocalTime().date(), QLocale::ShortFormat);
}

QString handednessWords(Handedness handedness) {
  switch (handedness) {
    case Handedness::Unknown:
      return PeopleWords::tr("Not known");
    case Handedness::Right:
      return PeopleWords::tr("Right-handed");
    case Handedness::Left:
      return PeopleWords::tr("Left-handed");
    case Handedness::Both:
      return PeopleWords::tr("Both hands");
  }
  return {};
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
            .arg(giver(*state.entry), dayWords(state.entry->from, numbers), dayWords(*state.entry->until - 1, numbers));
      }
      return PeopleWords::tr("Given by %1 on %2, until it is withdrawn.")
          .arg(giver(*state.entry), dayWords(state.entry->from, numbers));
    case Consent::Missing:
      return sentencesOf({PeopleWords::tr("Missing."), consequence(scope)});
    case Consent::NotByGuardian:
      return sentencesOf({PeopleWords::tr("Given by %1 on %2, but for a minor a parent or guardian must give it.")
                              .arg(giver(*state.entry), dayWords(state.entry->from, numbers)),
                          consequence(scope)});
    case Consent::Expired:
      return sentencesOf(
          {PeopleWords::tr("Expired on %1.").arg(dayWords(*state.entry->until - 1, numbers)), consequence(scope)});
    case Consent::Withdrawn:
      return sentencesOf(
          {PeopleWords::tr("Withdrawn by %1 on %2.").arg(giver(*state.entry), dayWords(state.entry->from, numbers)),
           consequence(scope)});
  }
  return {};
}

QString ledgerLine(const ConsentEntry& entry, bool struck, const Numbers& numbers) {
  QString line;
  if (entry.event == ConsentEvent::Withdrawn) {
    line = PeopleWords::tr("%1 \u00b7 %2: withdrawn by %3")
               .arg(dayWords(entry.from, numbers), scopeWords(entry.scope), giver(entry));
  } else if (entry.until) {
    line = PeopleWords::tr("%1 \u00b7 %2: given by %3 until %4")
               .arg(dayWords(entry.from, numbers), scopeWords(entry.scope), giver(entry),
                    dayWords(*entry.until - 1, numbers));
  } else {
    line = PeopleWords::tr("%1 \u00b7 %2: given by %3")
               .arg(dayWords(entry.from, numbers), scopeWords(entry.scope), giver(entry));
  }
  if (!entry.notedBy.empty()) line += PeopleWords::tr(", noted by %1").arg(text(entry.notedBy));
  if (struck) line += PeopleWords::tr(", taken back as a mistake");
  return line;
}

std::vector<ConsentScope> scopesFor(const Player& player) {
  return {ConsentScope::Measuring, filmScopeOf(player), ConsentScope::Sharing};
}

QString markWords(const PersonRow& row, UtcMilliseconds at) {
  const Player& player = row.details.player;
  QStringList marks;
  if (player.guest) marks << PeopleWords::tr("guest");
  const auto holds = [&](ConsentScope scope) { return consentState(row.consents, player.minor, scope, at).holds(); };
  if (!holds(ConsentScope::Measuring)) {
    marks << PeopleWords::tr("no consent");
  } else if (!holds(filmScopeOf(player))) {
    marks << PeopleWords::tr("no film");
  }
  return listOf(marks);
}

QString playedWords(const Person& person, const Numbers& numbers) {
  if (person.sessions == 0) return PeopleWords::tr("Has not played yet.");
  QStringList parts{PeopleWords::tr("%n session(s)", nullptr, person.sessions),
                    PeopleWords::tr("%n shot(s)", nullptr, person.shots)};
  if (person.lastPlayed) parts << PeopleWords::tr("last played on %1").arg(dayWords(*person.lastPlayed, numbers));
  return parts.join(QStringLiteral(" \u00b7 "));
}

QString authorWords(const Note& note, const Numbers& numbers) {
  QStringList parts;
  if (!note.who.empty()) parts << text(note.who);
  if (note.when != 0) parts << dayWords(note.when, numbers);
  return listOf(parts);
}

}  // namespace ferrule
