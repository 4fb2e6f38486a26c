// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/correction_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QStringList>

#include "app/words/joining.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

struct CorrectionWords {
  Q_DECLARE_TR_FUNCTIONS(CorrectionWords)
};

QString fieldWords(ShotField field) {
  switch (field) {
    case ShotField::Player:
      return CorrectionWords::tr("player");
    case ShotField::Outcome:
      return CorrectionWords::tr("result");
    case ShotField::FirstContact:
      return CorrectionWords::tr("first contact");
    case ShotField::Scratch:
      return CorrectionWords::tr("scratch");
    case ShotField::TargetBall:
      return CorrectionWords::tr("ball");
    case ShotField::TargetPocket:
      return CorrectionWords::tr("pocket");
    case ShotField::Ruling:
      return CorrectionWords::tr("ruling");
    case ShotField::Reading:
      return CorrectionWords::tr("reading");
    case ShotField::BallNames:
      return CorrectionWords::tr("names of two balls");
    case ShotField::BallBefore:
      return CorrectionWords::tr("a ball's place before the shot");
    case ShotField::BallAfter:
      return CorrectionWords::tr("a ball's place after the shot");
    case ShotField::Times:
      return CorrectionWords::tr("strike and rest");
    case ShotField::Split:
      return CorrectionWords::tr("two shots in one");
    case ShotField::Joined:
      return CorrectionWords::tr("one shot in two");
    case ShotField::Placement:
      return CorrectionWords::tr("a ball put down before the shot");
    case ShotField::Suggestion:
      return CorrectionWords::tr("suggestion");
  }
  return {};
}

/// A value in the words of the files, in the user's language where it is one of the trade's words.
QString valueWords(const std::optional<std::string>& value) {
  if (!value) return CorrectionWords::tr("unknown");
  if (const auto outcome = outcomeFromText(*value)) return outcomeWords(*outcome);
  if (const auto pocket = pocketFromText(*value)) return pocketWords(*pocket);
  if (const auto ball = ballFromText(*value)) return ballShort(*ball);
  if (*value == "true") return CorrectionWords::tr("yes");
  if (*value == "false") return CorrectionWords::tr("no");
  return QString::fromStdString(*value);
}

QString swapWords(const SwappedNames& names, const Numbers& numbers) {
  const QString one = ballWordsAtStart(names.one);
  const QString other = ballWords(names.other);
  if (!names.from_s) return CorrectionWords::tr("%1 and %2 were taken for each other").arg(one, other);
  return CorrectionWords::tr("%1 and %2 were taken for each other from %3 on")
      .arg(one, other, numbers.seconds(*names.from_s));
}

QString moveWords(const ValueCorrection& correction, ShotField field, const Numbers& numbers) {
  const auto to = ballPlaceFromText(*correction.corrected);
  const auto from = correction.measured ? ballPlaceFromText(*correction.measured) : std::nullopt;
  if (!to) return {};
  const QString ball = ballWordsAtStart(to->ball);
  const bool before = field == ShotField::BallBefore;
  if (!from) {
    return before ? CorrectionWords::tr("%1 put on the table before the shot").arg(ball)
                  : CorrectionWords::tr("%1 put on the table after the shot").arg(ball);
  }
  const QString way = numbers.millimetres(distance(from->position, to->position));
  return before ? CorrectionWords::tr("%1 moved by %2 before the shot").arg(ball, way)
                : CorrectionWords::tr("%1 moved by %2 after the shot").arg(ball, way);
}

QString timesWords(const ValueCorrection& correction, const Numbers& numbers) {
  const auto now = shotTimesFromText(*correction.corrected);
  const auto then = correction.measured ? shotTimesFromText(*correction.measured) : std::nullopt;
  if (!now || !then) return {};
  return CorrectionWords::tr("Strike and rest: measured %1 and %2, corrected to %3 and %4")
      .arg(numbers.seconds(then->strike_s), numbers.seconds(then->rest_s), numbers.seconds(now->strike_s),
           numbers.seconds(now->rest_s));
}

QString placementWords(const ValueCorrection& correction, const Numbers& numbers) {
  const auto was = correction.measured ? toldPlacementFromText(*correction.measured) : std::nullopt;
  const auto now = correction.corrected ? toldPlacementFromText(*correction.corrected) : std::nullopt;
  if (!was && !now) return {};
  const QString ball = ballWordsAtStart((was ? was : now)->ball);
  const QString when = numbers.seconds((was ? was : now)->time_s);
  if (!now) return CorrectionWords::tr("%1 was not put down at %2").arg(ball, when);
  if (!was) return CorrectionWords::tr("%1 was put down at %2").arg(ball, when);
  if (was->ball != now->ball) {
    return CorrectionWords::tr("Put down at %1: measured %2, corrected to %3")
        .arg(when, ballWords(was->ball), ballWords(now->ball));
  }
  return CorrectionWords::tr("%1 put down %2 away from where it was measured")
      .arg(ball, numbers.millimetres(distance(was->position, now->position)));
}

QString boundaryWords(const ValueCorrection& correction, ShotField field, const Numbers& numbers) {
  const auto boundary = shotBoundaryFromText(*correction.corrected);
  if (!boundary) return {};
  const QString when = numbers.seconds(boundary->time_s);
  return field == ShotField::Split ? CorrectionWords::tr("Measured as one shot, split in two at %1").arg(when)
                                   : CorrectionWords::tr("Measured as two shots, joined at %1").arg(when);
}

QString lineWords(const ValueCorrection& correction, const Numbers& numbers) {
  const auto field = shotFieldFromText(correction.field);
  if (!field) return {};
  switch (*field) {
    case ShotField::Ruling:
      return CorrectionWords::tr("Ruling: replaced by a person's");
    case ShotField::BallNames:
      if (const auto names = swappedNamesFromText(correction.corrected.value_or(std::string()))) {
        return swapWords(*names, numbers);
      }
      return {};
    case ShotField::BallBefore:
    case ShotField::BallAfter:
      return correction.corrected ? moveWords(correction, *field, numbers) : QString();
    case ShotField::Times:
      return correction.corrected ? timesWords(correction, numbers) : QString();
    case ShotField::Split:
    case ShotField::Joined:
      return correction.corrected ? boundaryWords(correction, *field, numbers) : QString();
    case ShotField::Placement:
      return placementWords(correction, numbers);
    default:
      break;
  }
  if (correction.measured == correction.corrected) {
    return CorrectionWords::tr("%1: %2, confirmed").arg(atStart(fieldWords(*field)), valueWords(correction.corrected));
  }
  return CorrectionWords::tr("%1: measured %2, corrected to %3")
      .arg(atStart(fieldWords(*field)), valueWords(correction.measured), valueWords(correction.corrected));
}

struct SayingField {
  ShotField operator()(const OutcomeSaid&) const { return ShotField::Outcome; }
  ShotField operator()(const TargetSaid&) const { return ShotField::TargetBall; }
  ShotField operator()(const FirstContactSaid&) const { return ShotField::FirstContact; }
  ShotField operator()(const PlayerSaid&) const { return ShotField::Player; }
  ShotField operator()(const RulingSaid&) const { return ShotField::Ruling; }
  ShotField operator()(const NamesSaid&) const { return ShotField::BallNames; }
  ShotField operator()(const PlaceSaid& said) const {
    return said.end == ShotEnd::Before ? ShotField::BallBefore : ShotField::BallAfter;
  }
  ShotField operator()(const TimesSaid&) const { return ShotField::Times; }
  ShotField operator()(const SplitSaid&) const { return ShotField::Split; }
  ShotField operator()(const JoinSaid&) const { return ShotField::Joined; }
  ShotField operator()(const PlacementSaid&) const { return ShotField::Placement; }
};

}  // namespace

QString sayingWords(const ShotSaying& saying) {
  if (std::holds_alternative<TargetSaid>(saying)) return CorrectionWords::tr("ball and pocket");
  return fieldWords(std::visit(SayingField{}, saying));
}

QString remarkWords(const Remark& remark) {
  const bool note = remark.kind == Remark::Kind::WriteNote || remark.kind == Remark::Kind::TakeNote;
  return note ? CorrectionWords::tr("note") : CorrectionWords::tr("tag");
}

QString notSaidSentence(NotSaid why) {
  switch (why) {
    case NotSaid::NoTarget:
      return CorrectionWords::tr("Say first which ball was meant for which pocket; then it can be made.");
    case NotSaid::NoReferee:
      return CorrectionWords::tr("No referee watched this shot, so there is no ruling to replace.");
    case NotSaid::NoTrack:
      return CorrectionWords::tr("Neither ball was followed in this shot, so there are no names to swap.");
    case NotSaid::OutsideTracks:
      return CorrectionWords::tr("The ways of this shot do not reach so far; choose a time between them.");
    case NotSaid::LaterStands:
      return CorrectionWords::tr("A later correction in this frame rests on this one; take that one back first.");
    case NotSaid::NotFilmed:
      return CorrectionWords::tr(
          "This frame was put in by hand: its shots have no film by which to part or join them.");
    case NotSaid::NoNextShot:
      return CorrectionWords::tr("No shot follows in this frame, so there is nothing to join with.");
    case NotSaid::NoPlacement:
      return CorrectionWords::tr("This ball was not put down there any more; choose again.");
    case NotSaid::StillPutIn:
      return CorrectionWords::tr("This frame is still being put in; undo the shot in Session instead.");
  }
  return {};
}

std::vector<CorrectionLine> correctionLines(const StoredShot& shot, const Numbers& numbers) {
  std::vector<CorrectionLine> lines;
  for (const ValueCorrection& correction : shot.corrections) {
    if (correction.cause) continue;
    const QString words = lineWords(correction, numbers);
    if (words.isEmpty()) continue;
    const QString when =
        numbers.locale().toString(QDateTime::fromMSecsSinceEpoch(correction.when), QLocale::ShortFormat);
    const QString who = QString::fromStdString(correction.who);
    lines.push_back(
        {correction.id, words, who.isEmpty() ? when : CorrectionWords::tr("%1, %2", "who, when").arg(who, when)});
  }
  return lines;
}

QString correctedWords(const StoredShot& shot) {
  QStringList words;
  for (const ValueCorrection& correction : shot.corrections) {
    const auto field = shotFieldFromText(correction.field);
    if (correction.cause || !field) continue;
    const QString word = fieldWords(*field);
    if (!words.contains(word)) words << word;
  }
  return listOf(words);
}

}  // namespace ferrule
