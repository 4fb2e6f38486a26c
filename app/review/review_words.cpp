// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/review_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>
#include <algorithm>

#include "app/review/moment.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct ReviewWords {
  Q_DECLARE_TR_FUNCTIONS(ReviewWords)
};

const QString kDot = QStringLiteral(" · ");

/// A table that was named by its file is shown without the folders that it lies in.
QString tableWords(const std::string& name) {
  const QString words = QString::fromStdString(name);
  return words.contains(QLatin1Char('/')) ? QFileInfo(words).completeBaseName() : words;
}

}  // namespace

QString sessionWords(const SessionSummary& session, const Numbers& numbers) {
  const QDateTime start = QDateTime::fromMSecsSinceEpoch(session.started).toLocalTime();
  QStringList parts;
  if (session.started != 0) {
    parts << ReviewWords::tr("%1, %2", "date, time")
                 .arg(numbers.locale().toString(start.date(), QLocale::ShortFormat),
                      numbers.locale().toString(start.time(), QLocale::ShortFormat));
  }
  if (!session.tableName.empty()) parts << tableWords(session.tableName);
  QStringList players;
  for (const std::string& player : session.players) {
    if (!player.empty()) players << QString::fromStdString(player);
  }
  if (!players.isEmpty()) parts << listOf(players);
  return parts.join(kDot);
}

QString momentWords(const StoredShot& shot, const Playhead& playhead, bool countsFilm, const Numbers& numbers) {
  QStringList parts;
  parts << numbers.seconds(playhead.time_s(), 2);
  if (countsFilm) {
    parts << ReviewWords::tr("image %1 of %2")
                 .arg(numbers.whole(playhead.index() + 1),
                      numbers.whole(static_cast<long long>(playhead.times().size())));
  }
  // The narrow line holds one of the two: what happens, or how well the balls' places are known.
  if (const auto event = eventAt(shot, playhead.time_s(), playhead.spacing_s())) {
    parts << eventWords(*event);
    return parts.join(kDot);
  }
  double worst_m = 0.0;
  for (const BallNow& ball : ballsAt(shot, playhead.time_s()))
    worst_m = std::max(worst_m, ball.standardUncertainty_m);
  if (worst_m > 0.0) parts << QChar(0x00B1) + numbers.millimetres(worst_m, 1);
  return parts.join(kDot);
}

}  // namespace ferrule
