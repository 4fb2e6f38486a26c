// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/measuring_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/words/check_sentence.h"
#include "app/words/joining.h"
#include "app/words/ruling_sentence.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

struct MeasuringWords {
  Q_DECLARE_TR_FUNCTIONS(MeasuringWords)
};

/// Before so much is known of the pace, a guess would jump.
constexpr double kLeastElapsed_s = 3.0;
constexpr double kLeastShare = 0.01;

QString deliveryWords(const Delivery& delivery, const Numbers& numbers) {
  QStringList words;
  if (delivery.aim_rad) words << MeasuringWords::tr("aim %1").arg(numbers.degrees(*delivery.aim_rad).value);
  if (delivery.speed_mps) words << numbers.speed(*delivery.speed_mps).value;
  return words.isEmpty() ? MeasuringWords::tr("aim and speed not observable") : listOf(words);
}

}  // namespace

QString remainingWords(double elapsed_s, double share) {
  if (elapsed_s < kLeastElapsed_s || share < kLeastShare || share > 1.0) return {};
  const double left_s = elapsed_s * (1.0 - share) / share;
  if (left_s < 60.0) return MeasuringWords::tr("less than a minute left");
  const int minutes = static_cast<int>(std::lround(left_s / 60.0));
  if (minutes < 90) return MeasuringWords::tr("about %n minute(s) left", nullptr, minutes);
  return MeasuringWords::tr("about %n hour(s) left", nullptr, static_cast<int>(std::lround(left_s / 3600.0)));
}

QString measuringWords(const QString& step, long images, double share, double elapsed_s, const Numbers& numbers) {
  if (step == QLatin1String("judging")) {
    return share < 0.0 ? MeasuringWords::tr("Looking for the shot to suggest beside each one")
                       : MeasuringWords::tr("Looking for the shot to suggest beside each one, %1", "share")
                             .arg(numbers.percent(share));
  }
  if (step == QLatin1String("looking") || step == QLatin1String("comparing")) {
    return MeasuringWords::tr("Checking that film and rig belong together");
  }
  if (images == 0) return MeasuringWords::tr("Opening the film");
  QString words = MeasuringWords::tr("Image %1").arg(numbers.whole(images));
  if (share >= 0.0) words = listOf({words, numbers.percent(share)});
  const QString left = remainingWords(elapsed_s, share);
  return left.isEmpty() ? words : MeasuringWords::tr("%1; %2", "how far, time left").arg(words, left);
}

QString measuredShotWords(const MeasuredShot& shot, const SeatNames& names, const Numbers& numbers) {
  const ShotReading& reading = shot.reading;
  const QString what = happenedWords(reading);
  QString words = QStringLiteral("%1  %2\n%3").arg(reading.number).arg(what, deliveryWords(reading.delivery, numbers));
  if (shot.ruling) words += '\n' + rulingSentence(shot.ruling->ruled, names);
  return words;
}

QString measuredFilmWords(const MeasureReport& report, const Numbers& numbers) {
  QStringList words;
  words << MeasuringWords::tr("%n shot(s) measured in %1 of film.", nullptr, report.shots)
               .arg(numbers.clock(report.duration_s));
  if (report.endedEarly) words << MeasuringWords::tr("The film is shorter than its header says; what is there counts.");
  if (!report.moves.empty()) {
    words << MeasuringWords::tr("The camera moved %n time(s): shots during a move are doubtful.", nullptr,
                                static_cast<int>(report.moves.size()));
  }
  if (report.table) {
    words << MeasuringWords::tr("Read with what session \"%1\" told of this table.")
                 .arg(QString::fromStdString(report.table->session));
  }
  for (const std::string& earlier : report.earlierSessions) {
    words << MeasuringWords::tr("It stands beside session \"%1\", which holds the same film.")
                 .arg(QString::fromStdString(earlier));
  }
  if (report.judged && report.judged->judged > 0) {
    words << MeasuringWords::tr("%n shot(s) stand beside what would have been suggested.", nullptr,
                                report.judged->judged);
  }
  return words.join(' ');
}

QString misfitWords(const SelfCheck& check, const CheckNames& names, const Numbers& numbers) {
  QString words = checkSentence(check, names);
  if (check.costMax_m > 0.0) {
    words += QLatin1Char(' ') + MeasuringWords::tr("As it is, a ball's place is off by up to %1 mm.")
                                    .arg(numbers.fixed(millimetresFromMetres(check.costMax_m), 1));
  }
  return words;
}

QString stoppedFilmWords(const QString& session, int shots) {
  return MeasuringWords::tr(
             "Stopped. %n shot(s) stand in session \"%1\", whose frame counts as incomplete; the film can "
             "be measured again from its start at any time.",
             nullptr, shots)
      .arg(session);
}

QString knownFilmWords(const FilmInRecord& known) {
  const QString name = QString::fromStdString(known.session.name);
  if (known.complete) {
    return MeasuringWords::tr("This film was measured before: session \"%1\" holds its %n shot(s).", nullptr,
                              known.shots)
        .arg(name);
  }
  return MeasuringWords::tr(
             "Measuring this film was broken off: session \"%1\" holds its first %n shot(s). Measured "
             "again, it becomes a session of its own beside that one.",
             nullptr, known.shots)
      .arg(name);
}

SeatNames seatNamesOf(const std::vector<std::string>& players) {
  const auto name = [&](std::size_t seat) {
    return seat < players.size() ? QString::fromStdString(players[seat]) : QString();
  };
  return {name(0), name(1)};
}

}  // namespace ferrule
