// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/shot_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "app/words/joining.h"
#include "app/words/miss_sentence.h"
#include "app/words/ruling_sentence.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct ShotWords {
  Q_DECLARE_TR_FUNCTIONS(ShotWords)
};

/// A ball that lies closer than this to where it lay did not move.
constexpr double kUnmoved_m = 0.004;

TablePoint mouthOf(const Table& table, PocketName name) {
  for (const Pocket& pocket : pockets(table)) {
    if (pocket.name == name) return pocket.mouth;
  }
  return {};
}

QString fromEnd(const Table& table, TablePoint point, const Numbers& numbers) {
  const double toFoot_m = table.length_m / 2.0 - point.x;
  const double toHead_m = table.length_m / 2.0 + point.x;
  return toFoot_m < toHead_m ? ShotWords::tr("%1 from the foot cushion").arg(numbers.metres(toFoot_m))
                             : ShotWords::tr("%1 from the head cushion").arg(numbers.metres(toHead_m));
}

QString fromSide(const Table& table, TablePoint point, const Numbers& numbers) {
  const double toLeft_m = table.width_m / 2.0 - point.y;
  const double toRight_m = table.width_m / 2.0 + point.y;
  return toLeft_m < toRight_m ? ShotWords::tr("%1 from the left").arg(numbers.metres(toLeft_m))
                              : ShotWords::tr("%1 from the right").arg(numbers.metres(toRight_m));
}

}  // namespace

std::vector<ValueLine> deliveryLines(const Delivery& delivery, const Numbers& numbers) {
  const auto line = [](const QString& name, const std::optional<Measured>& value, const QString& whyNot, auto show) {
    return value ? ValueLine{name, show(*value), {}} : ValueLine{name, {}, whyNot};
  };
  const auto angle = [&](const Measured& value) { return numbers.degrees(value); };
  const auto speed = [&](const Measured& value) { return numbers.speed(value); };
  const auto offset = [&](const Measured& value) { return numbers.radii(value); };
  const QString hidden = ShotWords::tr("the cue ball was hidden");
  return {
      line(ShotWords::tr("Aim"), delivery.aim_rad, hidden, angle),
      line(ShotWords::tr("Speed"), delivery.speed_mps, hidden, speed),
      line(ShotWords::tr("Tip side"), delivery.side, ShotWords::tr("nothing that it did shows the spin"), offset),
      line(ShotWords::tr("Tip height"), delivery.height, ShotWords::tr("nothing that it did shows the spin"), offset),
      line(ShotWords::tr("Elevation"), delivery.elevation_rad, ShotWords::tr("no curve and no hop"), angle),
  };
}

QString geometryWords(const ShotReading& shot, const MeasuredTable& measured, const Numbers& numbers) {
  if (!shot.target) return {};
  QStringList parts;
  if (shot.target->cut_rad) parts << ShotWords::tr("cut %1").arg(numbers.degrees(*shot.target->cut_rad, 0));
  const BallAt* cueBall = ballIn(shot.before, kCueBall);
  const BallAt* object = ballIn(shot.before, shot.target->ball);
  if (cueBall != nullptr && object != nullptr) {
    parts << ShotWords::tr("%1 to the ball").arg(numbers.metres(distance(cueBall->position, object->position)));
  }
  if (object != nullptr) {
    const double toPocket_m = distance(object->position, mouthOf(measured.table, shot.target->pocket));
    parts << ShotWords::tr("%1 to the pocket").arg(numbers.metres(toPocket_m));
  }
  return listOf(parts);
}

QString lineErrorWords(const ShotReading& shot, const MeasuredTable& measured, const Numbers& numbers) {
  if (!shot.target || !shot.target->lineError_rad) return {};
  const double error_rad = std::abs(*shot.target->lineError_rad);
  const BallAt* object = ballIn(shot.before, shot.target->ball);
  QString words = ShotWords::tr("%1 left the pocket's middle by %2")
                      .arg(ballWordsAtStart(shot.target->ball), numbers.degrees(error_rad, 2));
  // Older records hold the angle alone.
  std::optional<double> off_m = shot.target->missAtMouth_m;
  if (!off_m && object != nullptr)
    off_m = std::tan(error_rad) * distance(object->position, mouthOf(measured.table, shot.target->pocket));
  if (off_m) words += ShotWords::tr(", %1 at the pocket").arg(numbers.millimetres(std::abs(*off_m)));
  if (shot.target->missSide) {
    words += *shot.target->missSide == MissSide::Over ? ShotWords::tr(": cut too much, thin")
                                                      : ShotWords::tr(": cut too little, thick");
  }
  return stopped(words);
}

QStringList restWords(const ShotReading& shot, const MeasuredTable& measured, const Numbers& numbers) {
  QStringList lines;
  int unmoved = 0;
  for (const BallAt& rest : shot.after) {
    const BallAt* start = ballIn(shot.before, rest.ball);
    if (start != nullptr && distance(start->position, rest.position) < kUnmoved_m) {
      ++unmoved;
      continue;
    }
    lines << ShotWords::tr("%1: %2, %3", "ball, along, across")
                 .arg(ballWordsAtStart(rest.ball), fromEnd(measured.table, rest.position, numbers),
                      fromSide(measured.table, rest.position, numbers));
  }
  if (unmoved > 0) lines << ShotWords::tr("%n ball(s) did not move.", nullptr, unmoved);
  return lines;
}

QStringList outcomeLines(const StoredShot& shot) {
  QStringList lines;
  const bool byPerson = std::ranges::any_of(shot.corrections, [](const ValueCorrection& correction) {
    return !correction.cause && correction.field == toText(ShotField::Outcome);
  });
  lines << QStringLiteral("%1 · %2").arg(
      atStart(outcomeWords(shot.reading.outcome)),
      byPerson ? ShotWords::tr("corrected by hand") : verdictWords(shot.reading.outcomeVerdict));
  for (const ShotFlag flag : shot.reading.flags)
    lines << ShotWords::tr("Not a clean reading: %1.").arg(flagWords(flag));
  return lines;
}

QStringList rulingLines(const StoredShot& shot, const std::vector<std::string>& players) {
  if (!shot.ruling) return {};
  const auto ruled = rulingFromText(shot.ruling->content);
  if (!ruled) return {};
  SeatNames names;
  if (players.size() == 2) names = {QString::fromStdString(players[0]), QString::fromStdString(players[1])};
  QStringList lines{rulingSentence(*ruled, names), atStart(verdictWords(ruled->ruling.sureness))};
  for (const ValueCorrection& correction : shot.corrections) {
    if (correction.field != toText(ShotField::Ruling) || !correction.measured) continue;
    if (const auto earlier = rulingFromText(*correction.measured)) {
      const QString before =
          correction.cause ? ShotWords::tr("Ruled before a correction: %1") : ShotWords::tr("Ruled before: %1");
      lines << before.arg(rulingSentence(*earlier, names));
    }
  }
  for (const QString& question : rulingQuestions(*ruled))
    lines << ShotWords::tr("To be settled: %1").arg(question);
  for (const QString& evidence : rulingEvidence(*ruled, shot.reading.events))
    lines << atStart(evidence);
  return lines;
}

}  // namespace ferrule
