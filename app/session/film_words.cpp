// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/film_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

struct FilmWords {
  Q_DECLARE_TR_FUNCTIONS(FilmWords)
};

QString oneObstacle(const FilmObstacle& obstacle) {
  const QString name = QString::fromStdString(obstacle.player.name);
  switch (obstacle.state.consent) {
    case Consent::Expired:
      return FilmWords::tr("No film is kept: the consent of %1 to being filmed has run out; note a new one in Players.")
          .arg(name);
    case Consent::Withdrawn:
      return FilmWords::tr("No film is kept: %1 has withdrawn the consent to being filmed.").arg(name);
    case Consent::NotByGuardian:
      return FilmWords::tr("No film is kept: for %1, a minor, a guardian must consent; note it in Players.").arg(name);
    case Consent::Given:
    case Consent::Missing:
      break;
  }
  if (obstacle.player.minor) {
    return FilmWords::tr("No film is kept: for %1, a minor, a guardian must consent; note it in Players.").arg(name);
  }
  return FilmWords::tr("No film is kept: no consent of %1 to being filmed is noted in Players.").arg(name);
}

}  // namespace

QString noFilmWords(const FilmPermission& permission) {
  if (!permission.named) {
    return FilmWords::tr("No film is kept: name those who play, so that their consent can be looked up.");
  }
  if (permission.obstacles.size() == 1) return oneObstacle(permission.obstacles.front());
  QStringList names;
  for (const FilmObstacle& obstacle : permission.obstacles)
    names << QString::fromStdString(obstacle.player.name);
  return FilmWords::tr("No film is kept: these players' consents to being filmed are missing or no longer hold: %1.")
      .arg(names.join(QStringLiteral(", ")));
}

QString noFilmWords(const Error& error) {
  return FilmWords::tr("No film is kept: %1", "a sentence").arg(errorSentence(error));
}

QString filmCountWords(const FilmKeeper::Counts& counts, const Numbers& numbers) {
  if (counts.outOfSpace) {
    return FilmWords::tr("The film ended after %1 images: the disk has no room for more. Measuring goes on.")
        .arg(numbers.whole(counts.came - counts.dropped));
  }
  const QString images = numbers.whole(counts.came);
  if (counts.dropped == 0) return FilmWords::tr("Filming: %1 images, none dropped").arg(images);
  return FilmWords::tr("Filming: %1 images, %2 dropped").arg(images, numbers.whole(counts.dropped));
}

}  // namespace ferrule
