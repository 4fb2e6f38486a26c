// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/people_words.h"

#include <QDateTime>

#include "app/words/joining.h"

namespace ferrule {

namespace {

QString text(const std::string& words) {
  return QString::fromStdString(words);
}

}  // namespace

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

QString ledgerLine(const ConsentEntry& entry, bool struck, const Numbers& numbers) {
  QString line;
  if (entry.event == ConsentEvent::Withdrawn) {
    line = PeopleWords::tr("%1 \u00b7 %2: withdrawn by %3")
               .arg(dayWords(entry.from, numbers), scopeWords(entry.scope), giverWords(entry));
  } else if (entry.until) {
    line = PeopleWords::tr("%1 \u00b7 %2: given by %3 until %4")
               .arg(dayWords(entry.from, numbers), scopeWords(entry.scope), giverWords(entry),
                    dayWords(*entry.until - 1, numbers));
  } else {
    line = PeopleWords::tr("%1 \u00b7 %2: given by %3")
               .arg(dayWords(entry.from, numbers), scopeWords(entry.scope), giverWords(entry));
  }
  if (!entry.notedBy.empty()) line += PeopleWords::tr(", noted by %1").arg(text(entry.notedBy));
  if (struck) line += PeopleWords::tr(", taken back as a mistake");
  return line;
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
