// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/drill_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/drills/aim_lines.h"

namespace ferrule {

namespace {

/// Carries the translation context; lupdate finds the words by tr().
struct DrillWords {
  Q_DECLARE_TR_FUNCTIONS(DrillWords)
};

struct BuiltIn {
  const char* key;
  const char* title;
  const char* text;
};

constexpr std::array kBuiltIn{
    BuiltIn{"centre-line", QT_TRANSLATE_NOOP("DrillWords", "Centre-line there and back"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "The cue ball alone, from the head spot to the foot cushion and back over its start. "
                              "Always off to one side: aim or unmeant side spin. Now left, now right: the stroke.")},
    BuiltIn{"stop-ladder", QT_TRANSLATE_NOOP("DrillWords", "Straight stop ladder"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "Straight pots from four distances, each a step longer. The cue ball stops within one "
                              "ball's width of the contact. Stay on a rung until eight of ten succeed.")},
    BuiltIn{"follow-bands", QT_TRANSLATE_NOOP("DrillWords", "Straight follow bands"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A straight pot; the cue ball follows into the first, second or third band behind the "
                              "contact. Say the band before the stroke.")},
    BuiltIn{"draw-bands", QT_TRANSLATE_NOOP("DrillWords", "Straight draw bands"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A straight pot; the cue ball comes back into the band that is called: stop, a quarter, "
                              "a half or three quarters of the table's width.")},
    BuiltIn{"lag", QT_TRANSLATE_NOOP("DrillWords", "Lag to the head rail"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "From behind the head string to the foot cushion and back. The cue ball rests within "
                              "half a diamond of the head cushion.")},
    BuiltIn{"stop-lines", QT_TRANSLATE_NOOP("DrillWords", "Bare-table stop lines"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "The cue ball alone, to four lines in turn of distance: the middle, the foot cushion, "
                              "the middle on the way back, and the head string's far side on the way back.")},
    BuiltIn{"object-ball-pace", QT_TRANSLATE_NOOP("DrillWords", "Object-ball pace to the rail"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A full hit sends the object ball down the table; it rests within half a diamond of the "
                              "foot cushion.")},
    BuiltIn{"cut-fan", QT_TRANSLATE_NOOP("DrillWords", "Cut fan"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "The ball on the foot spot, the cue ball half a table's width away: straight, then cuts "
                              "of 15, 30, 45 and 60 degrees. Misses on one side at every angle are aim; thick at "
                              "every angle is throw not allowed for.")},
    BuiltIn{"foot-spot-cuts", QT_TRANSLATE_NOOP("DrillWords", "Foot-spot long cuts"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "The ball on the foot spot, the cue ball behind the head string: long cuts of about "
                              "33, 47 and 60 degrees.")},
    BuiltIn{"rail-frozen-cut", QT_TRANSLATE_NOOP("DrillWords", "Rail-frozen ball cut"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "The ball touches the long cushion; send it along the cushion into the corner. Watch "
                              "whether ball or cushion is met first.")},
    BuiltIn{"side-pocket-pair", QT_TRANSLATE_NOOP("DrillWords", "Side-pocket pair"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "One ball before the side pocket, cut from the head and from the foot. The pocket takes "
                              "little at this angle: pace decides.")},
    BuiltIn{"thin-cut", QT_TRANSLATE_NOOP("DrillWords", "Thin cut"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A cut of about 65 degrees into the corner; the cue ball must stay on the table. Note "
                              "which side the misses go to.")},
    BuiltIn{"stun-to-the-mark", QT_TRANSLATE_NOOP("DrillWords", "Stun to the mark"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A stun shot: the cue ball leaves along the tangent line and meets the long cushion in "
                              "the marked piece. Short of it: draw; beyond it: follow.")},
    BuiltIn{"three-zones", QT_TRANSLATE_NOOP("DrillWords", "Three-zone cue ball"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "One pot, three places for the cue ball, called in turn. Pot and landing are counted "
                              "apart and together.")},
    BuiltIn{"centre-row", QT_TRANSLATE_NOOP("DrillWords", "Row on the centre string"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "Five balls in a row across the table, cue ball in hand. Pot all of them; the cue ball "
                              "touches no cushion.")},
    BuiltIn{"correct-side", QT_TRANSLATE_NOOP("DrillWords", "Correct-side two-ball"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "Pot the first ball and come to the right side of the second: a cut of 15 to 45 degrees "
                              "from the foot half. Then pot it.")},
    BuiltIn{"three-ball-pattern", QT_TRANSLATE_NOOP("DrillWords", "Called three-ball pattern"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "Three balls spread out, cue ball in hand. Say order, pockets and landing places first, "
                              "then play it as it was said.")},
    BuiltIn{"cue-ball-on-rail", QT_TRANSLATE_NOOP("DrillWords", "Cue ball on the rail"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "The cue ball touches the cushion, so that only its top can be struck. A short stroke "
                              "and a level cue pot more than force.")},
    BuiltIn{"bank-to-the-side", QT_TRANSLATE_NOOP("DrillWords", "Straight-back bank to the side"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "The ball goes to the opposite long cushion and back into the side pocket. Note whether "
                              "misses are long or short; pace changes the angle.")},
    BuiltIn{"one-rail-kick", QT_TRANSLATE_NOOP("DrillWords", "One-rail kick"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A blocker stands in the straight line. Meet the ball by way of one cushion; better "
                              "still, leave it hidden.")},
    BuiltIn{"two-rail-kick", QT_TRANSLATE_NOOP("DrillWords", "Two-rail kick"),
            QT_TRANSLATE_NOOP("DrillWords", "The same by way of two cushions. Any part of the ball counts.")},
    BuiltIn{"hide-behind", QT_TRANSLATE_NOOP("DrillWords", "Hide-behind safety"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "Meet the ball and bring the cue ball behind the two blockers, so that no straight way "
                              "to the ball is left.")},
    BuiltIn{"thin-hit-safety", QT_TRANSLATE_NOOP("DrillWords", "Thin-hit distance safety"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A thin hit: the ball stays near the foot cushion, the cue ball comes back near the head "
                              "cushion.")},
    BuiltIn{"break-control", QT_TRANSLATE_NOOP("DrillWords", "Break control"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "A full rack, always from the same place: pot a ball and leave the cue ball in the "
                              "middle of the table.")},
    BuiltIn{"open-spread-run", QT_TRANSLATE_NOOP("DrillWords", "Open-spread run"),
            QT_TRANSLATE_NOOP("DrillWords",
                              "Balls spread apart, none near a cushion, cue ball in hand: pot all of them in any "
                              "order. The balls made before a miss are counted.")},
};

struct Tag {
  const char* tag;
  const char* words;
};

constexpr std::array kTags{
    Tag{"straight", QT_TRANSLATE_NOOP("DrillWords", "straight")},
    Tag{"speed", QT_TRANSLATE_NOOP("DrillWords", "speed")},
    Tag{"stop", QT_TRANSLATE_NOOP("DrillWords", "stop")},
    Tag{"follow", QT_TRANSLATE_NOOP("DrillWords", "follow")},
    Tag{"draw", QT_TRANSLATE_NOOP("DrillWords", "draw")},
    Tag{"cut", QT_TRANSLATE_NOOP("DrillWords", "cut")},
    Tag{"aim", QT_TRANSLATE_NOOP("DrillWords", "aim")},
    Tag{"long", QT_TRANSLATE_NOOP("DrillWords", "long")},
    Tag{"rail", QT_TRANSLATE_NOOP("DrillWords", "rail")},
    Tag{"side-pocket", QT_TRANSLATE_NOOP("DrillWords", "side pocket")},
    Tag{"position", QT_TRANSLATE_NOOP("DrillWords", "position")},
    Tag{"run", QT_TRANSLATE_NOOP("DrillWords", "run")},
    Tag{"bank", QT_TRANSLATE_NOOP("DrillWords", "bank")},
    Tag{"kick", QT_TRANSLATE_NOOP("DrillWords", "kick")},
    Tag{"safety", QT_TRANSLATE_NOOP("DrillWords", "safety")},
    Tag{"break", QT_TRANSLATE_NOOP("DrillWords", "break")},
};

QString translated(const char* text) {
  return QCoreApplication::translate("DrillWords", text);
}

const BuiltIn* wordsOf(const std::string& key) {
  const auto* found = std::ranges::find(kBuiltIn, key, [](const BuiltIn& entry) { return std::string(entry.key); });
  return found == kBuiltIn.end() ? nullptr : found;
}

QString ofBall(const DrillGoal& goal) {
  return ballWords(goal.ball.value_or(kCueBall));
}

}  // namespace

QString drillTitle(const Drill& drill) {
  if (!drill.title.empty()) return QString::fromStdString(drill.title);
  const BuiltIn* words = wordsOf(drill.key);
  return words != nullptr ? translated(words->title) : QString::fromStdString(drill.key);
}

QString drillText(const Drill& drill) {
  if (!drill.text.empty()) return QString::fromStdString(drill.text);
  const BuiltIn* words = wordsOf(drill.key);
  return words != nullptr ? translated(words->text) : QString();
}

QString tagWords(const std::string& tag) {
  const auto* found = std::ranges::find(kTags, tag, [](const Tag& entry) { return std::string(entry.tag); });
  return found == kTags.end() ? QString::fromStdString(tag) : translated(found->words);
}

QString cautionSentence(DrillCaution caution) {
  switch (caution) {
    case DrillCaution::Jump:
      return DrillWords::tr(
          "Jump shots: wear eye protection, keep the space around the table clear, and let nobody "
          "stand where the ball may fly.");
    case DrillCaution::Break:
      return DrillWords::tr(
          "Power breaks: balls may leave the table; nobody stands at the foot end, bystanders stay "
          "behind the player.");
  }
  return {};
}

QString stationWords(const DrillStation& station, const MeasuredTable& measured, const Numbers& numbers) {
  QStringList parts;
  if (const auto lines = aimLines(station, measured)) {
    if (lines->cut_rad && lines->cutSide) {
      const QString cut = numbers.degrees(*lines->cut_rad, 0);
      parts << (*lines->cutSide == CutSide::Left ? DrillWords::tr("cut %1 to the left").arg(cut)
                                                 : DrillWords::tr("cut %1 to the right").arg(cut));
    } else if (lines->cut_rad) {
      parts << DrillWords::tr("straight");
    }
    if (lines->ghost && station.goals.front().cushions.empty()) {
      parts << DrillWords::tr("from %1").arg(numbers.metres(distance(lines->cueBall.front(), *lines->ghost)));
    }
  }
  for (const DrillGoal& goal : station.goals) {
    if (goal.kind != GoalKind::Rest || !goal.zone) continue;
    const SurfacePlace middle = surfaceFromTable(measured.table, middleOf(*goal.zone, measured.table));
    parts << DrillWords::tr("zone at %1 diamonds along, %2 across")
                 .arg(numbers.fixed(4.0 * middle.along, 1), numbers.fixed(4.0 * middle.across, 1));
    if (!goal.cushions.empty())
      parts << DrillWords::tr("by way of %n cushion(s)", nullptr, static_cast<int>(goal.cushions.size()));
    break;
  }
  return listOf(parts);
}

QString goalWords(const DrillGoal& goal, const Numbers& numbers) {
  const int cushions = static_cast<int>(goal.cushions.size());
  switch (goal.kind) {
    case GoalKind::Pot:
      if (!goal.ball) return DrillWords::tr("a ball falls");
      if (!goal.pocket) return DrillWords::tr("%1 falls").arg(ofBall(goal));
      if (cushions > 0) {
        return DrillWords::tr("%1 by way of %n cushion(s) to %2", nullptr, cushions)
            .arg(ofBall(goal), pocketWords(*goal.pocket));
      }
      return DrillWords::tr("%1 to %2").arg(ofBall(goal), pocketWords(*goal.pocket));
    case GoalKind::Rest:
      return DrillWords::tr("%1 rests in the zone").arg(ofBall(goal));
    case GoalKind::Contact:
      if (cushions > 0) {
        return DrillWords::tr("%1 is met by way of %n cushion(s)", nullptr, cushions).arg(ofBall(goal));
      }
      return DrillWords::tr("%1 is met first").arg(ofBall(goal));
    case GoalKind::Hidden:
      return DrillWords::tr("%1 is hidden from the cue ball").arg(ofBall(goal));
    case GoalKind::AngleLeft:
      return DrillWords::tr("a cut of %1 to %2 is left on %3")
          .arg(numbers.degrees(goal.least_rad, 0), numbers.degrees(goal.most_rad, 0), ofBall(goal));
    case GoalKind::MeetsCushion:
      return DrillWords::tr("the cue ball meets the cushion at the mark");
    case GoalKind::ComesBack:
      return DrillWords::tr("the cue ball comes back over its start");
    case GoalKind::Clear:
      return DrillWords::tr("every ball falls");
    case GoalKind::NoCushion:
      return DrillWords::tr("the cue ball touches no cushion");
    case GoalKind::Said:
      return DrillWords::tr("it went as it was called");
  }
  return {};
}

QString figureWords(GoalKind kind, double figure, const Numbers& numbers) {
  switch (kind) {
    case GoalKind::Rest:
      return figure == 0.0 ? DrillWords::tr("inside") : DrillWords::tr("%1 outside").arg(numbers.millimetres(figure));
    case GoalKind::Hidden:
      return DrillWords::tr("%1 open").arg(numbers.degrees(figure));
    case GoalKind::AngleLeft:
      return DrillWords::tr("cut %1").arg(numbers.degrees(figure, 0));
    case GoalKind::MeetsCushion:
    case GoalKind::ComesBack:
      return DrillWords::tr("%1 mm off").arg(numbers.withSign(1000.0 * figure, 0));
    case GoalKind::Clear:
      return DrillWords::tr("%n ball(s)", nullptr, static_cast<int>(figure));
    case GoalKind::Pot:
    case GoalKind::Contact:
    case GoalKind::NoCushion:
    case GoalKind::Said:
      return {};
  }
  return {};
}

QString placeSentence(const BallAt& ball, const MeasuredTable& measured, const Numbers& numbers) {
  const SurfacePlace place = surfaceFromTable(measured.table, ball.position);
  const double x_m = measured.table.length_m / 2.0 + ball.position.x;
  const double y_m = measured.table.width_m / 2.0 + ball.position.y;
  const bool fromHead = place.along <= 1.0;
  const bool fromRight = place.across <= 0.5;
  const QString along = numbers.millimetres(fromHead ? x_m : measured.table.length_m - x_m);
  const QString across = numbers.millimetres(fromRight ? y_m : measured.table.width_m - y_m);
  const QString diamonds =
      DrillWords::tr("%1: %2 diamonds along, %3 across")
          .arg(ballWordsAtStart(ball.ball), numbers.fixed(4.0 * place.along, 2), numbers.fixed(4.0 * place.across, 2));
  const QString lengthWords = fromHead ? DrillWords::tr("%1 from the head cushion").arg(along)
                                       : DrillWords::tr("%1 from the foot cushion").arg(along);
  const QString widthWords =
      fromRight ? DrillWords::tr("%1 from the right").arg(across) : DrillWords::tr("%1 from the left").arg(across);
  return DrillWords::tr("%1 (%2)", "in diamonds, in mm").arg(diamonds, listOf({lengthWords, widthWords}));
}

QString shareWords(const MetShare& share, const Numbers& numbers) {
  if (share.known == 0) return DrillWords::tr("none yet");
  const QString counted = DrillWords::tr("%1 of %2").arg(numbers.whole(share.met), numbers.whole(share.known));
  const Interval interval = *share.interval();
  const QString between = DrillWords::tr("between %1 and %2\u00a0%")
                              .arg(numbers.fixed(100.0 * interval.least, 0), numbers.fixed(100.0 * interval.most, 0));
  if (!share.isEnough()) return DrillWords::tr("%1, %2: not enough yet for a share").arg(counted, between);
  return DrillWords::tr("%1: %2\u00a0%, %3").arg(counted, numbers.fixed(100.0 * *share.share(), 0), between);
}

/// More tries than these nobody plays to learn whether a run was better.
constexpr int kMostTrialsNamed = 200;

QString changeSentence(const DrillHistory& history, const Numbers& numbers) {
  if (history.runs.size() < 2) return DrillWords::tr("One run more, and the two can be compared.");
  if (!history.change) {
    return DrillWords::tr("Not enough yet to compare: at least %n try(s) in the last run and in those before.", nullptr,
                          kFewestForShare);
  }
  const HistoryChange& change = *history.change;
  const QString points = numbers.withSign(100.0 * change.difference, 0);
  const QString between =
      DrillWords::tr("between %1 and %2")
          .arg(numbers.withSign(100.0 * change.interval.least, 0), numbers.withSign(100.0 * change.interval.most, 0));
  if (change.isReal) {
    return DrillWords::tr("The last run differs from those before by %1 points (%2): more than chance.")
        .arg(points, between);
  }
  if (!change.trialsToTell) return DrillWords::tr("The last run is as good as those before.");
  const QString differs =
      DrillWords::tr("The last run differs from those before by %1 points (%2): may be chance.").arg(points, between);
  if (*change.trialsToTell > kMostTrialsNamed) {
    return sentencesOf({differs, DrillWords::tr("So small a difference takes more tries to show than anyone plays.")});
  }
  return sentencesOf(
      {differs,
       DrillWords::tr("About %1 tries before and as many after would tell.").arg(numbers.whole(*change.trialsToTell))});
}

QString faultSentence(const DrillFinding& finding) {
  const QString ball = ballWordsAtStart(finding.ball.value_or(kCueBall));
  switch (finding.fault) {
    case DrillFault::NoStation:
      return DrillWords::tr("The drill has no set-up; add one.");
    case DrillFault::NoGoal:
      return DrillWords::tr("Nothing is asked; choose what a try is to bring about.");
    case DrillFault::GoalsDiffer:
      return DrillWords::tr("The set-ups ask different things; give all of them the same kinds of goals.");
    case DrillFault::NoTrials:
      return DrillWords::tr("The number of tries must be from 1 to %1.").arg(kMostTrials);
    case DrillFault::NoObjectBall:
      return DrillWords::tr("%1 is asked for but does not lie on the table; put it there.").arg(ball);
    case DrillFault::GoalIncomplete:
      return DrillWords::tr("A goal lacks its ball, pocket or zone; choose it.");
    case DrillFault::BallTwice:
      return DrillWords::tr("%1 lies there twice; take one away.").arg(ball);
    case DrillFault::BallOffTable:
      return DrillWords::tr("%1 lies off the playing surface; move it.").arg(ball);
    case DrillFault::BallsOverlap:
      return DrillWords::tr("%1 and %2 overlap; move one of them.")
          .arg(ball, ballWords(finding.other.value_or(kCueBall)));
    case DrillFault::NoRoom:
      return DrillWords::tr("So many balls do not find room so far apart; ask for fewer or let them lie closer.");
    case DrillFault::ZoneOffTable:
      return DrillWords::tr("A zone lies beyond the cushions; move it.");
    case DrillFault::CutTooThin:
      return DrillWords::tr("%1 cannot be cut that thinly; move a ball or choose another pocket.").arg(ball);
  }
  return {};
}

}  // namespace ferrule
