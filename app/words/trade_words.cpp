// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/trade_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/words/joining.h"

namespace ferrule {

namespace {

struct TradeWords {
  Q_DECLARE_TR_FUNCTIONS(TradeWords)
};

/// The object ball that a shot without a target is called by; null where none fell.
const PocketedBall* firstFallen(const std::vector<PocketedBall>& pocketed) {
  const auto fallen = std::ranges::find_if_not(pocketed, &BallName::isCueBall, &PocketedBall::ball);
  return fallen == pocketed.end() ? nullptr : &*fallen;
}

/// What fell of a shot, but for the ball that it is called by; that the cue ball fell is what a scratch says already.
QStringList fallenBeside(const ShotReading& shot, std::optional<BallName> named) {
  QStringList balls;
  for (const PocketedBall& fallen : shot.pocketed) {
    if (fallen.ball == named || (fallen.ball.isCueBall() && shot.outcome == Outcome::Scratch)) continue;
    balls << ballShort(fallen.ball);
  }
  return balls;
}

/// The clock position of an offset, in half hours from twelve, clockwise: 0 to 23.
int clockHalfHours(double side, double height) {
  const double turn_rad = std::atan2(side, height);
  const auto halves = static_cast<int>(std::lround(turn_rad / std::numbers::pi * 12.0));
  return (halves + 24) % 24;
}

QString clockWords(int halfHours) {
  const int hour = halfHours / 2;
  if (halfHours % 2 == 0) return TradeWords::tr("%1 o'clock", "a place on the ball's face").arg(hour == 0 ? 12 : hour);
  switch (hour) {
    case 0:
      return TradeWords::tr("half past twelve");
    case 1:
      return TradeWords::tr("half past one");
    case 2:
      return TradeWords::tr("half past two");
    case 3:
      return TradeWords::tr("half past three");
    case 4:
      return TradeWords::tr("half past four");
    case 5:
      return TradeWords::tr("half past five");
    case 6:
      return TradeWords::tr("half past six");
    case 7:
      return TradeWords::tr("half past seven");
    case 8:
      return TradeWords::tr("half past eight");
    case 9:
      return TradeWords::tr("half past nine");
    case 10:
      return TradeWords::tr("half past ten");
    default:
      return TradeWords::tr("half past eleven");
  }
}

}  // namespace

QString atStart(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

QString ballWords(BallName ball) {
  if (ball.isCueBall()) return TradeWords::tr("the cue ball");
  return TradeWords::tr("the %1", "an object ball by its number").arg(ball.number());
}

QString ballWordsAtStart(BallName ball) {
  if (ball.isCueBall()) return TradeWords::tr("The cue ball");
  return TradeWords::tr("The %1", "an object ball by its number").arg(ball.number());
}

QString ballShort(BallName ball) {
  return ball.isCueBall() ? TradeWords::tr("cue", "cue ball, in a narrow list") : QString::number(ball.number());
}

QString pocketWords(PocketName pocket) {
  switch (pocket) {
    case PocketName::HeadLeft:
      return TradeWords::tr("head-left");
    case PocketName::HeadRight:
      return TradeWords::tr("head-right");
    case PocketName::SideLeft:
      return TradeWords::tr("side-left");
    case PocketName::SideRight:
      return TradeWords::tr("side-right");
    case PocketName::FootLeft:
      return TradeWords::tr("foot-left");
    case PocketName::FootRight:
      return TradeWords::tr("foot-right");
  }
  return {};
}

QString cushionWords(CushionName cushion) {
  switch (cushion) {
    case CushionName::Head:
      return TradeWords::tr("the head cushion");
    case CushionName::Foot:
      return TradeWords::tr("the foot cushion");
    case CushionName::LeftHead:
      return TradeWords::tr("the left-head cushion");
    case CushionName::LeftFoot:
      return TradeWords::tr("the left-foot cushion");
    case CushionName::RightHead:
      return TradeWords::tr("the right-head cushion");
    case CushionName::RightFoot:
      return TradeWords::tr("the right-foot cushion");
  }
  return {};
}

QString outcomeWords(Outcome outcome) {
  switch (outcome) {
    case Outcome::Pot:
      return TradeWords::tr("made");
    case Outcome::Miss:
      return TradeWords::tr("missed");
    case Outcome::Safety:
      return TradeWords::tr("safety");
    case Outcome::Scratch:
      return TradeWords::tr("scratch");
    case Outcome::Foul:
      return TradeWords::tr("foul");
    case Outcome::Break:
      return TradeWords::tr("break");
  }
  return {};
}

QString verdictWords(Verdict verdict) {
  switch (verdict) {
    case Verdict::Certain:
      return TradeWords::tr("certain");
    case Verdict::Proposed:
      return TradeWords::tr("likely");
    case Verdict::Ask:
      return TradeWords::tr("cannot be decided from the film: please check");
  }
  return {};
}

QString gameWords(const std::string& game) {
  if (game == "eight-ball") return TradeWords::tr("eight-ball");
  if (game == "nine-ball") return TradeWords::tr("nine-ball");
  if (game == "ten-ball") return TradeWords::tr("ten-ball");
  if (game == "straight-pool") return TradeWords::tr("straight pool");
  return QString::fromStdString(game);
}

QString eventWords(const ShotEvent& event) {
  const QString ball = ballWordsAtStart(event.ball);
  switch (event.kind) {
    case EventKind::Ball:
      if (event.other) return TradeWords::tr("%1 meets %2", "two balls").arg(ball, ballWords(*event.other));
      return TradeWords::tr("%1 meets a ball").arg(ball);
    case EventKind::Cushion:
      if (event.cushion)
        return TradeWords::tr("%1 meets %2", "ball and cushion").arg(ball, cushionWords(*event.cushion));
      return TradeWords::tr("%1 meets a cushion").arg(ball);
    case EventKind::Pocket:
      if (event.pocket) return TradeWords::tr("%1 falls, %2", "ball and pocket").arg(ball, pocketWords(*event.pocket));
      return TradeWords::tr("%1 falls").arg(ball);
    case EventKind::OffTable:
      return TradeWords::tr("%1 leaves the table").arg(ball);
  }
  return {};
}

QString shotWords(Outcome outcome, const std::optional<Target>& target, const std::vector<PocketedBall>& pocketed,
                  const std::optional<BallName>& firstContact) {
  if (outcome == Outcome::Break) return TradeWords::tr("break");
  if (target)
    return TradeWords::tr("%1 to %2", "ball and pocket").arg(ballShort(target->ball), pocketWords(target->pocket));
  if (const PocketedBall* fallen = firstFallen(pocketed)) {
    return TradeWords::tr("%1 to %2", "ball and pocket").arg(ballShort(fallen->ball), pocketWords(fallen->pocket));
  }
  if (firstContact) return TradeWords::tr("off %1", "the first ball met").arg(ballWords(*firstContact));
  return TradeWords::tr("no ball met");
}

QString shotWords(const ShotSummary& shot) {
  return shotWords(shot.outcome, shot.target, shot.pocketed, shot.firstContact);
}

QString happenedWords(const ShotReading& shot) {
  QString what = shotWords(shot.outcome, shot.target, shot.pocketed, shot.firstContact);
  if (shot.outcome == Outcome::Break) {
    const QStringList fell = fallenBeside(shot, std::nullopt);
    return fell.isEmpty() ? what : listApart({what, TradeWords::tr("pocketed: %1", "balls").arg(listOf(fell))});
  }
  what = listOf({what, outcomeWords(shot.outcome)});
  if (shot.target && shot.target->missSide) what += ' ' + missWords(*shot.target->missSide);
  std::optional<BallName> named;
  if (shot.target) {
    named = shot.target->ball;
  } else if (const PocketedBall* fallen = firstFallen(shot.pocketed)) {
    named = fallen->ball;
  }
  const QStringList fell = fallenBeside(shot, named);
  return fell.isEmpty() ? what : listApart({what, TradeWords::tr("also pocketed: %1", "balls").arg(listOf(fell))});
}

QString missWords(MissSide side) {
  return side == MissSide::Over ? TradeWords::tr("thin") : TradeWords::tr("thick");
}

QString shotHeading(const ShotReading& shot) {
  const QString number = QString::number(shot.number);
  if (shot.outcome == Outcome::Break) return TradeWords::tr("Shot %1: the break").arg(number);
  if (!shot.target) {
    const QString met = shot.firstContact ? ballWords(*shot.firstContact) : TradeWords::tr("no ball");
    return TradeWords::tr("Shot %1: met %2, %3").arg(number, met, outcomeWords(shot.outcome));
  }
  QString result = outcomeWords(shot.outcome);
  if (shot.outcome == Outcome::Miss && shot.target->missSide) {
    result = TradeWords::tr("missed %1", "thin or thick").arg(missWords(*shot.target->missSide));
  }
  return TradeWords::tr("Shot %1: %2 to %3, %4")
      .arg(number, ballWords(shot.target->ball), pocketWords(shot.target->pocket), result);
}

QString tipWords(const Measured& side, const Measured& height, double ballRadius_m, const Numbers& numbers) {
  const double offset = std::hypot(side.value, height.value);
  const double spread = std::hypot(side.standardUncertainty, height.standardUncertainty);
  // Two standard uncertainties: below that the direction on the clock would be chance.
  if (offset < 2.0 * spread || offset < 0.005) return TradeWords::tr("Struck at the centre, as far as can be seen.");
  return TradeWords::tr("Struck at about %1, %2 from the centre.")
      .arg(clockWords(clockHalfHours(side.value, height.value)), numbers.millimetres(offset * ballRadius_m, 1));
}

}  // namespace ferrule
