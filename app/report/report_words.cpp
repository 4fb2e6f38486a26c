// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_words.h"

#include <QDateTime>
#include <QTimeZone>
#include <cmath>

#include "app/words/joining.h"
#include "core/geometry/units.h"

namespace ferrule {

namespace {

constexpr QChar kTo{0x2013};
constexpr QChar kDegree{0x00B0};

QDate dayOf(std::int64_t utc_ms) {
  return QDateTime::fromMSecsSinceEpoch(utc_ms).date();
}

}  // namespace

QString ReportWords::percent(double share, int decimals) const {
  return numbers_.percent(share, decimals);
}

QString ReportWords::percents(const Interval& interval, int decimals) const {
  return numbers_.percents(interval.least, interval.most, decimals);
}

QString ReportWords::degrees(double angle_rad) const {
  return numbers_.degrees(angle_rad, 2);
}

QString ReportWords::degrees(const Interval& interval) const {
  return numbers_.fixed(degreesFromRadians(interval.least), 2) + kTo +
         numbers_.fixed(degreesFromRadians(interval.most), 2) + kDegree;
}

QString ReportWords::date(std::int64_t utc_ms) const {
  return numbers_.locale().toString(dayOf(utc_ms), tr("d MMMM yyyy"));
}

QString ReportWords::shortDate(std::int64_t utc_ms) const {
  return shortDate(utc_ms, numbers_);
}

QString ReportWords::shortDate(std::int64_t utc_ms, const Numbers& numbers) {
  return numbers.locale().toString(dayOf(utc_ms), tr("d MMM"));
}

QString ReportWords::shots(int count) const {
  return tr("%Ln shot(s)", nullptr, count);
}

QString ReportWords::sessions(int count) const {
  return tr("%Ln session(s)", nullptr, count);
}

QString ReportWords::perHundred(double share) const {
  return numbers_.fixed(100.0 * share, 0);
}

QString ReportWords::shortage(const Shortage& shortage) const {
  switch (shortage.kind) {
    case ShortageKind::Shots:
      return tr("not enough yet: %1 of %2 shots").arg(numbers_.whole(shortage.have), numbers_.whole(shortage.need));
    case ShortageKind::Sessions:
      return tr("not enough yet: %1 of %2 sessions").arg(numbers_.whole(shortage.have), numbers_.whole(shortage.need));
    case ShortageKind::NoPlan:
      return tr("nobody wrote down what was meant");
    case ShortageKind::NoRepeats:
      return tr("nobody wrote down what was meant, and no set-up was repeated");
    case ShortageKind::NoTimes:
      return tr("the films have no clock");
    case ShortageKind::NoValues:
      return tr("not recorded yet");
  }
  return {};
}

QString ReportWords::name(FindingKind kind) const {
  switch (kind) {
    case FindingKind::AimTrend:
      return tr("the aim over the weeks");
    case FindingKind::SpeedTrend:
      return tr("the control of speed over the weeks");
    case FindingKind::MakeTrend:
      return tr("the balls potted over the weeks");
    case FindingKind::LateAim:
      return tr("the aim after 40 minutes");
    case FindingKind::LateMakes:
      return tr("the balls potted after 40 minutes");
    case FindingKind::MatchMakes:
      return tr("the balls potted in matches");
    case FindingKind::AimSide:
      return tr("a pull to the left or right");
    case FindingKind::LeftCutSide:
      return tr("thick or thin cuts to the left");
    case FindingKind::RightCutSide:
      return tr("thick or thin cuts to the right");
  }
  return {};
}

QString ReportWords::sentence(const Finding& finding) const {
  const bool less = finding.to < finding.from;
  switch (finding.kind) {
    case FindingKind::AimTrend:
      return (less ? tr("The aim got steadier: from about %1 off to about %2 off.")
                   : tr("The aim got less steady: from about %1 off to about %2 off."))
          .arg(degrees(finding.from), degrees(finding.to));
    case FindingKind::SpeedTrend:
      return (less ? tr("The speed of the stroke got steadier: it strayed by about %1 at first and by about %2 at the "
                        "end.")
                   : tr("The speed of the stroke got less steady: it strayed by about %1 at first and by about %2 at "
                        "the "
                        "end."))
          .arg(percent(finding.from), percent(finding.to));
    case FindingKind::MakeTrend:
      return (less
                  ? tr("Fewer balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they "
                       "were.")
                  : tr("More balls went in: of 100 tried, about %1 at first and %2 at the end, counting how hard they "
                       "were."))
          .arg(perHundred(finding.from), perHundred(finding.to));
    case FindingKind::LateAim:
      return (less ? tr("The aim is better late in a session: about %1 off before 40 minutes and %2 after.")
                   : tr("The aim gets worse when a session grows long: about %1 off before 40 minutes and %2 after. A "
                        "break may help."))
          .arg(degrees(finding.from), degrees(finding.to));
    case FindingKind::LateMakes:
      return (less
                  ? tr("Fewer balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and "
                       "%2 "
                       "after.")
                  : tr("More balls go in late in a session: of 100 equally hard ones about %1 before 40 minutes and %2 "
                       "after."))
          .arg(perHundred(finding.from), perHundred(finding.to));
    case FindingKind::MatchMakes:
      return (less ? tr("Fewer balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in "
                        "matches.")
                   : tr("More balls are potted in matches: of 100 equally hard ones about %1 in practice and %2 in "
                        "matches."))
          .arg(perHundred(finding.from), perHundred(finding.to));
    case FindingKind::AimSide:
      return (less ? tr("The aim is pulled to the right by %1 on average, whichever way the ball has to go.")
                   : tr("The aim is pulled to the left by %1 on average, whichever way the ball has to go."))
          .arg(degrees(std::abs(finding.to)));
    case FindingKind::LeftCutSide:
      return (less ? tr("Balls that must go to the left are hit too full (thick): the aim is off by %1 on average.")
                   : tr("Balls that must go to the left are hit too thin: the aim is off by %1 on average."))
          .arg(degrees(std::abs(finding.to)));
    case FindingKind::RightCutSide:
      return (less ? tr("Balls that must go to the right are hit too full (thick): the aim is off by %1 on average.")
                   : tr("Balls that must go to the right are hit too thin: the aim is off by %1 on average."))
          .arg(degrees(std::abs(finding.to)));
  }
  return {};
}

QString ReportWords::name(WorkDrill drill) const {
  switch (drill) {
    case WorkDrill::CentreLine:
      return tr("Centre-line there and back");
    case WorkDrill::CutFanLeft:
      return tr("Cut fan, left half");
    case WorkDrill::CutFanRight:
      return tr("Cut fan, right half");
    case WorkDrill::CutFanTired:
      return tr("Cut fan as the last drill of the day");
    case WorkDrill::StopLadder:
      return tr("Straight stop ladder");
    case WorkDrill::ThinCut:
      return tr("Thin cut");
    case WorkDrill::LongCut:
      return tr("Foot-spot long cuts");
    case WorkDrill::Lag:
      return tr("Lag to the head rail");
    case WorkDrill::DrawBands:
      return tr("Straight draw bands");
  }
  return {};
}

QString ReportWords::how(WorkDrill drill) const {
  switch (drill) {
    case WorkDrill::CentreLine:
      return tr(
          "Send the cue ball alone from the head spot over the middle of the foot cushion and back; it should "
          "return over its start.");
    case WorkDrill::CutFanLeft:
      return tr(
          "Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; "
          "cuts of 15, 30, 45 and 60 degrees to the left.");
    case WorkDrill::CutFanRight:
      return tr(
          "Object ball on the middle line, one quarter from the foot cushion; cue ball half a table's width away; "
          "cuts of 15, 30, 45 and 60 degrees to the right.");
    case WorkDrill::CutFanTired:
      return tr(
          "Cuts of 15, 30, 45 and 60 degrees to both sides, played after 40 minutes of practice: rest for five "
          "minutes first, and keep the routine.");
    case WorkDrill::StopLadder:
      return tr("Straight pots from four distances, each a step longer; the cue ball stops dead at the contact.");
    case WorkDrill::ThinCut:
      return tr(
          "Object ball a quarter of the table from the foot cushion and near the side; cut of 65 degrees into the "
          "corner.");
    case WorkDrill::LongCut:
      return tr(
          "Object ball on the foot spot, cue ball behind the head string: cuts of 33, 47 and 60 degrees into the "
          "corner.");
    case WorkDrill::Lag:
      return tr(
          "Send the cue ball alone from behind the head string to the foot cushion and back; it should stop as near to "
          "the head cushion as it can.");
    case WorkDrill::DrawBands:
      return tr(
          "Straight pots of a metre; the cue ball comes back by nothing, one, two and three hands' breadths, called "
          "before each stroke.");
  }
  return {};
}

QString ReportWords::name(WorkKind kind) const {
  switch (kind) {
    case WorkKind::AimSide:
      return tr("The pull of the aim to one side");
    case WorkKind::LeftCutSide:
      return tr("Cuts to the left");
    case WorkKind::RightCutSide:
      return tr("Cuts to the right");
    case WorkKind::LateAim:
      return tr("The end of long sessions");
    case WorkKind::LongShots:
      return tr("Long shots");
    case WorkKind::ThinCuts:
      return tr("Thin cuts");
    case WorkKind::ShortShots:
      return tr("Short and medium shots");
    case WorkKind::SpeedControl:
      return tr("Control of the speed");
    case WorkKind::TipPoint:
      return tr("Where the tip meets the ball");
  }
  return {};
}

QString ReportWords::evidence(const WorkItem& item) const {
  const auto among = [this](double value, const Interval& interval) {
    return std::pair{numbers_.fixed(value, 1),
                     numbers_.fixed(interval.least, 1) + kTo + numbers_.fixed(interval.most, 1)};
  };
  QStringList sentences;
  const auto [balls, ballsRange] = among(item.gain, item.gainInterval);
  switch (item.kind) {
    case WorkKind::SpeedControl:
      sentences << tr("%1 shots were played again in the simulator with a fifth less scatter of the speed.")
                       .arg(numbers_.whole(item.tried));
      break;
    case WorkKind::TipPoint:
      sentences << tr("%1 shots were played again in the simulator with a fifth less scatter of the tip.")
                       .arg(numbers_.whole(item.tried));
      break;
    case WorkKind::LongShots:
    case WorkKind::ThinCuts:
    case WorkKind::ShortShots:
      sentences
          << made(item)
          << tr("Were these a fifth steadier, about %1 more balls of every 100 tried would go in (very probably %2).")
                 .arg(balls, ballsRange);
      break;
    default:
      sentences << made(item)
                << tr("Without this habit about %1 more balls of every 100 tried would go in (very probably %2).")
                       .arg(balls, ballsRange);
  }
  if (item.frames) {
    const auto [frames, framesRange] = among(*item.frames, item.framesInterval);
    sentences << tr("That is worth about %1 frames of every 100 (very probably %2).").arg(frames, framesRange);
  }
  return sentencesOf(sentences);
}

QString ReportWords::made(const WorkItem& item) const {
  return tr("%1 such pots were tried and %2 made.").arg(numbers_.whole(item.tried), percent(item.share));
}

QString ReportWords::target(const WorkItem& item, std::int64_t retest_ms) const {
  const QString retest = tr("Test again on %1.").arg(date(retest_ms));
  const double goal = (1.0 - kDrawnIn) * item.share;
  if (item.kind == WorkKind::SpeedControl) {
    return sentencesOf({tr("Target: speeds that scatter by %1 or less.").arg(percent(goal)), retest});
  }
  if (item.kind == WorkKind::TipPoint) {
    return sentencesOf(
        {tr("Target: a tip that scatters by %1 of the ball's radius or less.").arg(percent(goal)), retest});
  }
  QStringList sentences{tr("Target: %1 of %2.").arg(numbers_.whole(item.target), numbers_.whole(item.trials))};
  if (item.convincing <= item.trials) {
    sentences << tr("%1 or more of %2 would prove by themselves that it was no luck.")
                     .arg(numbers_.whole(item.convincing), numbers_.whole(item.trials));
  }
  return sentencesOf(sentences << retest);
}

}  // namespace ferrule
