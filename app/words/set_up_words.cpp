// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/set_up_words.h"

#include <QCoreApplication>
#include <cmath>

#include "app/words/trade_words.h"
#include "core/drills/trial.h"

namespace ferrule {

namespace {

struct SetUpWords {
  Q_DECLARE_TR_FUNCTIONS(SetUpWords)
};

/// Nearer than this nobody puts a ball by hand. Common practice, no source.
constexpr double kStands_m = 0.002;

/// Along both axes, as seen looking from the head to the foot.
QString moveWords(TableVector move, const Numbers& numbers) {
  QStringList ways;
  if (std::abs(move.x) >= kStands_m) {
    const QString length = numbers.millimetres(std::abs(move.x));
    ways << (move.x > 0.0 ? SetUpWords::tr("%1 to the foot").arg(length)
                          : SetUpWords::tr("%1 to the head").arg(length));
  }
  if (std::abs(move.y) >= kStands_m) {
    const QString length = numbers.millimetres(std::abs(move.y));
    ways << (move.y > 0.0 ? SetUpWords::tr("%1 to the left").arg(length)
                          : SetUpWords::tr("%1 to the right").arg(length));
  }
  return ways.join(QStringLiteral(", "));
}

QString placedSentence(const PlacedBall& place, const Numbers& numbers) {
  const QString ball = ballWordsAtStart(place.wanted.ball);
  const auto error = place.error();
  if (!error) return SetUpWords::tr("%1 is not at its place.").arg(ball);
  const QString off = numbers.millimetres(std::hypot(error->x, error->y));
  const QString move = moveWords(-1.0 * *error, numbers);
  if (move.isEmpty()) return SetUpWords::tr("%1: %2 off, stands.").arg(ball, off);
  return SetUpWords::tr("%1: %2 off; move it %3.", "a ball, a length, where").arg(ball, off, move);
}

}  // namespace

QStringList setUpSentences(const SetUpCheck& check, const Numbers& numbers) {
  QStringList lines;
  for (const PlacedBall& place : check.places)
    lines << placedSentence(place, numbers);
  if (check.looseAmiss) {
    lines << SetUpWords::tr("Loose balls are missing, or lie too close to each other or to a cushion.");
  }
  if (check.cueBallAmiss) lines << SetUpWords::tr("The cue ball in hand is not where it may lie.");
  if (!check.extra.empty()) {
    lines << SetUpWords::tr("%n ball(s) lie there that do not belong to the set-up.", nullptr,
                            static_cast<int>(check.extra.size()));
  }
  const QString tolerance = numbers.millimetres(kSetUpTolerance_m);
  lines << (check.isWithin(kSetUpTolerance_m) ? SetUpWords::tr("Set up within %1: the try may begin.").arg(tolerance)
                                              : SetUpWords::tr("Not yet within %1.").arg(tolerance));
  return lines;
}

}  // namespace ferrule
