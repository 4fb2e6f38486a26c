// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/ruling_words.h"

#include <QCoreApplication>
#include <array>

#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct RulingWords {
  Q_DECLARE_TR_FUNCTIONS(RulingWords)
};

QString ballOr(std::optional<BallName> ball, const QString& otherwise) {
  return ball ? ballWords(*ball) : otherwise;
}

QString ballQuestion(const Doubt& doubt) {
  const QString ball = ballOr(doubt.ball, RulingWords::tr("a ball"));
  const QString other = ballOr(doubt.other, RulingWords::tr("another ball"));
  switch (doubt.kind) {
    case DoubtKind::SplitHit:
      return RulingWords::tr("Which ball was met first, %1 or %2?").arg(ball, other);
    case DoubtKind::NearRail:
      return RulingWords::tr("Did %1 touch a cushion?").arg(ball);
    case DoubtKind::PocketUnsure:
      return RulingWords::tr("Did %1 fall?").arg(ball);
    case DoubtKind::BallLost:
      return RulingWords::tr("Where did %1 end: on the table, in a pocket or off the table?").arg(ball);
    case DoubtKind::JumpedBack:
      return RulingWords::tr("Did %1 leave the table and touch anything before it came back?").arg(ball);
    case DoubtKind::MovedByHand:
      return RulingWords::tr("Did somebody touch %1?").arg(ball);
    case DoubtKind::SmallGap:
      return RulingWords::tr("Was the cue ball struck twice? It lay very close to %1.").arg(ball);
    case DoubtKind::FrozenToRail:
      return RulingWords::tr("Was %1 declared frozen to the cushion?").arg(ball);
    case DoubtKind::NameUnsure:
      return RulingWords::tr("Which was which, %1 and %2?").arg(ball, other);
    case DoubtKind::TargetAtString:
      return RulingWords::tr("Did %1 lie behind the head string?").arg(ball);
    case DoubtKind::CallUnknown:
      return RulingWords::tr("Was %1 called in that pocket?").arg(ball);
    default:
      return {};
  }
}

}  // namespace

QString SeatNames::of(Seat seat) const {
  const QString& name = seat == Seat::First ? first : second;
  if (!name.isEmpty()) return name;
  return seat == Seat::First ? RulingWords::tr("the first player") : RulingWords::tr("the second player");
}

std::span<const FoulKind> calledFouls() {
  static constexpr std::array kCalled{FoulKind::NoContact,   FoulKind::WrongBallFirst, FoulKind::NoRail,
                                      FoulKind::TouchedBall, FoulKind::DoubleHit,      FoulKind::PushShot,
                                      FoulKind::NoFoot,      FoulKind::BallsMoving,    FoulKind::BadPlacement};
  return kCalled;
}

QString foulWords(FoulKind kind, std::optional<BallName> ball) {
  switch (kind) {
    case FoulKind::Scratch:
      return RulingWords::tr("the cue ball fell or left the table");
    case FoulKind::WrongBallFirst:
      return RulingWords::tr("%1 was met first").arg(ballOr(ball, RulingWords::tr("a wrong ball")));
    case FoulKind::NoContact:
      return RulingWords::tr("no ball was met");
    case FoulKind::NoRail:
      return RulingWords::tr("nothing fell and no ball met a cushion after the contact");
    case FoulKind::NoFoot:
      return RulingWords::tr("no foot was on the floor");
    case FoulKind::BallOffTable:
      return RulingWords::tr("%1 left the table").arg(ballOr(ball, RulingWords::tr("a ball")));
    case FoulKind::TouchedBall:
      return RulingWords::tr("%1 was touched").arg(ballOr(ball, RulingWords::tr("a ball")));
    case FoulKind::DoubleHit:
      return RulingWords::tr("the cue ball was struck twice");
    case FoulKind::PushShot:
      return RulingWords::tr("the cue ball was pushed");
    case FoulKind::BallsMoving:
      return RulingWords::tr("balls were still moving");
    case FoulKind::BadPlacement:
      return RulingWords::tr("the cue ball was not placed behind the head string");
    case FoulKind::BadPlayFromBehind:
      return RulingWords::tr("the cue ball did not cross the head string before it met %1")
          .arg(ballOr(ball, RulingWords::tr("a ball")));
    case FoulKind::CueOnTable:
      return RulingWords::tr("the cue was laid on the table to aim");
    case FoulKind::OutOfTurn:
      return RulingWords::tr("it was the other's turn");
    case FoulKind::SlowPlay:
      return RulingWords::tr("the time was over");
    case FoulKind::RackTemplate:
      return RulingWords::tr("the rack template was in the way");
    case FoulKind::Unsportsmanlike:
      return RulingWords::tr("unsportsmanlike conduct");
    case FoulKind::BreakRequirement:
      return RulingWords::tr("too few balls were driven to a cushion on the break");
  }
  return {};
}

QString questionWords(const Doubt& doubt) {
  switch (doubt.kind) {
    case DoubtKind::BallsMoving:
      return RulingWords::tr("Did balls still move when the shot began?");
    case DoubtKind::Placement:
      return RulingWords::tr("Did the cue ball lie behind the head string?");
    case DoubtKind::Unfinished:
      return RulingWords::tr("The film does not show the shot well enough. What happened?");
    case DoubtKind::GroupsUnknown:
      return RulingWords::tr("Who plays the solids and who the stripes?");
    case DoubtKind::PastString:
      return RulingWords::tr("How many balls fell or passed the head string on the break?");
    case DoubtKind::PushOutUnknown:
      return RulingWords::tr("Was a push-out announced?");
    case DoubtKind::Warned:
      return RulingWords::tr("Was the player told of two fouls in a row?");
    case DoubtKind::BallsDiffer:
      return RulingWords::tr("Other balls lie on the table than the shots before left there. Which are in play?");
    case DoubtKind::NotSpelledOut:
      return RulingWords::tr("The rules do not spell this case out. How is it ruled?");
    case DoubtKind::FrameOver:
      return RulingWords::tr("The frame was over before this shot. Was it?");
    default:
      return ballQuestion(doubt);
  }
}

QString optionWords(const Option& option, const Ruling& ruling, const SeatNames& names) {
  const QString shooter = names.of(ruling.shooter);
  switch (option.kind) {
    case OptionKind::Accept:
      return RulingWords::tr("play from here");
    case OptionKind::TakeInHand:
      return option.cueBall == CueBallPlace::InHandAnywhere ? RulingWords::tr("take the cue ball in hand")
                                                            : RulingWords::tr("take it behind the head string");
    case OptionKind::RackAgain:
      return RulingWords::tr("have the balls racked and break");
    case OptionKind::OpponentBreaks:
      return RulingWords::tr("have %1 break again").arg(shooter);
    case OptionKind::SpotAndPlay:
      return RulingWords::tr("have the 8 spotted and play");
    case OptionKind::HandBack:
      return RulingWords::tr("have %1 play on").arg(shooter);
  }
  return {};
}

QString winWords(WinReason reason) {
  switch (reason) {
    case WinReason::EightPocketed:
      return RulingWords::tr("the 8 was potted as called");
    case WinReason::EightOnFoul:
      return RulingWords::tr("the 8 fell on a foul");
    case WinReason::EightEarly:
      return RulingWords::tr("the 8 fell before its time");
    case WinReason::EightWrongPocket:
      return RulingWords::tr("the 8 fell into a pocket that was not called");
    case WinReason::EightOffTable:
      return RulingWords::tr("the 8 left the table");
    case WinReason::EightOnBreak:
      return RulingWords::tr("the 8 fell on the break");
    case WinReason::EightAndScratchOnBreak:
      return RulingWords::tr("the 8 and the cue ball fell on the break");
    case WinReason::ScratchOnEight:
      return RulingWords::tr("the cue ball was lost with the 8 on");
    case WinReason::NinePocketed:
      return RulingWords::tr("the 9 was potted");
    case WinReason::TenPocketed:
      return RulingWords::tr("the 10 was potted as called");
    case WinReason::PointsReached:
      return RulingWords::tr("the points are reached");
    case WinReason::ThreeFouls:
      return RulingWords::tr("three fouls in a row");
    case WinReason::Concession:
      return RulingWords::tr("the other conceded");
    case WinReason::Person:
      return RulingWords::tr("ruled by a person");
  }
  return {};
}

QString groupWords(Group group) {
  return group == Group::Solids ? RulingWords::tr("the solids") : RulingWords::tr("the stripes");
}

QString cueBallWords(CueBallPlace place) {
  switch (place) {
    case CueBallPlace::AsItLies:
      return {};
    case CueBallPlace::InHandBehindString:
      return RulingWords::tr("cue ball in hand behind the head string");
    case CueBallPlace::InHandAnywhere:
      return RulingWords::tr("cue ball in hand");
    case CueBallPlace::OnHeadSpot:
      return RulingWords::tr("cue ball on the head spot");
    case CueBallPlace::OnCentreSpot:
      return RulingWords::tr("cue ball on the centre spot");
  }
  return {};
}

QString ruleNumberWords(const RuleNumber& rule) {
  if (rule.section.empty()) {
    return rule.edition == Edition::Before2008 ? RulingWords::tr("rules before 2008") : RulingWords::tr("house rule");
  }
  const QString section = QString::fromStdString(rule.section);
  return rule.edition == Edition::World2008 ? RulingWords::tr("world rules 2008, %1").arg(section)
                                            : RulingWords::tr("world rules 2016, %1").arg(section);
}

}  // namespace ferrule
