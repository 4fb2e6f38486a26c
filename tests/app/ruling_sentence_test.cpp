// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/ruling_sentence.h"

#include <QTranslator>
#include <QtTest>

#include "app/review/shot_words.h"
#include "core/rules/referee.h"
#include "tests/app/review_sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

static void loadTranslationFiles() {
  Q_INIT_RESOURCE(translations);
}

class RulingSentenceTest : public QObject {
  Q_OBJECT
 private slots:
  void aFoulNamesWhatHappenedAndWhoseTurnItIs();
  void aPotNamesTheGroupAndWhoPlaysOn();
  void optionsAreOfferedToWhoMayChoose();
  void theEndOfAFrameSaysWhoWonAndWhy();
  void pointsAreToldWithTheScore();
  void aQuestionIsAskedInWords();
  void evidenceNamesTheRuleAndTheEvent();
  void theReviewShowsTheRulingOfItsShot();
  void everyPieceHasWordsInEnglishAndGerman();
};

namespace {

const SeatNames kNames{"Nerea", "Ivo"};

ShotEvent contact(int ball) {
  ShotEvent event;
  event.kind = EventKind::Ball;
  event.ball = kCueBall;
  event.other = BallName(ball);
  return event;
}

ShotEvent fall(int ball, PocketName pocket) {
  ShotEvent event;
  event.kind = EventKind::Pocket;
  event.ball = ball == 0 ? kCueBall : BallName(ball);
  event.pocket = pocket;
  return event;
}

GameState playing(Game game) {
  GameState state = newFrame(worldRules(game));
  state.phase = Phase::Play;
  state.cueBall = CueBallPlace::AsItLies;
  return state;
}

RuledShot ruledOn(const GameState& state, const ShotEvents& shot) {
  RuledShot ruled;
  ruled.game = state.rules.game;
  ruled.ruling = rule(state, shot);
  ruled.points = apply(state, ruled.ruling).points;
  return ruled;
}

ShotEvents shotOf(std::vector<ShotEvent> events) {
  ShotEvents shot;
  shot.events = std::move(events);
  return shot;
}

/// The words of every value of every enum that a ruling can hold.
QStringList allPieces() {
  QStringList words;
  for (int i = 0; i <= static_cast<int>(FoulKind::BreakRequirement); ++i)
    words << foulWords(static_cast<FoulKind>(i), BallName(10));
  for (int i = 0; i <= static_cast<int>(DoubtKind::FrameOver); ++i)
    words << questionWords({static_cast<DoubtKind>(i), BallName(2), BallName(10)});
  for (int i = 0; i <= static_cast<int>(OptionKind::HandBack); ++i)
    words << optionWords({static_cast<OptionKind>(i), Seat::First, CueBallPlace::InHandAnywhere, false}, {}, kNames);
  for (int i = 0; i <= static_cast<int>(WinReason::Person); ++i)
    words << winWords(static_cast<WinReason>(i));
  for (int i = 1; i <= static_cast<int>(CueBallPlace::OnCentreSpot); ++i)
    words << cueBallWords(static_cast<CueBallPlace>(i));
  words << groupWords(Group::Solids) << groupWords(Group::Stripes) << SeatNames{}.of(Seat::First)
        << SeatNames{}.of(Seat::Second) << ruleNumberWords({Edition::World2016, "6.2"})
        << ruleNumberWords({Edition::World2008, "6.2"}) << ruleNumberWords({Edition::Before2008, ""})
        << ruleNumberWords({Edition::World2016, ""});
  return words;
}

}  // namespace

void RulingSentenceTest::aFoulNamesWhatHappenedAndWhoseTurnItIs() {
  GameState state = playing(Game::EightBall);
  state.groupOfFirst = Group::Solids;
  const RuledShot ruled = ruledOn(state, shotOf({contact(10), fall(0, PocketName::FootLeft)}));
  QCOMPARE(
      rulingSentence(ruled, kNames),
      QString("Foul: the cue ball fell or left the table and the 10 was met first. Ivo is at the table, cue ball in "
              "hand."));
  QCOMPARE(rulingSentence(ruled), QString("Foul: the cue ball fell or left the table and the 10 was met first. The "
                                          "second player is at the table, cue ball in hand."));
}

void RulingSentenceTest::aPotNamesTheGroupAndWhoPlaysOn() {
  ShotEvents shot = shotOf({contact(5), fall(5, PocketName::FootRight)});
  shot.call = Call{BallName(5), PocketName::FootRight, false};
  QCOMPARE(rulingSentence(ruledOn(playing(Game::EightBall), shot), kNames),
           QString("Nerea has the solids. Nerea plays on."));
}

void RulingSentenceTest::optionsAreOfferedToWhoMayChoose() {
  const GameState state = newFrame(worldRules(Game::EightBall));
  QCOMPARE(
      rulingSentence(ruledOn(state, shotOf({contact(1)})), kNames),
      QString("The break was too weak, which is no foul. Ivo may choose: play from here, have the balls racked and "
              "break or have Nerea break again."));
}

void RulingSentenceTest::theEndOfAFrameSaysWhoWonAndWhy() {
  const RuledShot ruled = ruledOn(playing(Game::NineBall), shotOf({contact(1), fall(9, PocketName::SideLeft)}));
  QCOMPARE(rulingSentence(ruled, kNames), QString("Nerea wins the frame: the 9 was potted."));
}

void RulingSentenceTest::pointsAreToldWithTheScore() {
  GameState state = playing(Game::StraightPool);
  state.points = {12, 0};
  QCOMPARE(
      rulingSentence(ruledOn(state, shotOf({contact(3), fall(0, PocketName::SideLeft)})), kNames),
      QString("Foul: the cue ball fell or left the table. Nerea: \u22121, now 11. Ivo is at the table, cue ball in "
              "hand behind the head string."));
}

void RulingSentenceTest::aQuestionIsAskedInWords() {
  GameState state = playing(Game::EightBall);
  state.groupOfFirst = Group::Solids;
  ShotEvents shot = shotOf({contact(2), fall(2, PocketName::FootLeft)});
  shot.doubts = {{DoubtKind::SplitHit, BallName(2), BallName(10)}};
  QCOMPARE(rulingQuestions(ruledOn(state, shot)), QStringList{"Which ball was met first, the 2 or the 10?"});
}

void RulingSentenceTest::evidenceNamesTheRuleAndTheEvent() {
  GameState state = playing(Game::EightBall);
  state.groupOfFirst = Group::Solids;
  const ShotEvents shot = shotOf({contact(10), fall(12, PocketName::FootLeft)});
  QCOMPARE(rulingEvidence(ruledOn(state, shot), shot.events),
           (QStringList{"world rules 2016, 6.2: The cue ball meets the 10",
                        "world rules 2016, 3.9: The cue ball meets the 10"}));
}

void RulingSentenceTest::theReviewShowsTheRulingOfItsShot() {
  StoredShot shot = sampleShot(1);
  QVERIFY(rulingLines(shot, {"Nerea", "Ivo"}).isEmpty());
  GameState state = playing(Game::NineBall);
  state.onTable = {BallName(3), BallName(9)};
  shot.ruling = RulingEntry{Verdict::Certain, {}, rulingText(ruledOn(state, shotOf(shot.reading.events)))};
  QCOMPARE(rulingLines(shot, {"Nerea", "Ivo"}),
           (QStringList{"Nerea plays on.", "Certain", "World rules 2016, 2.5: The 3 falls, foot-left"}));
  // One name only, or three: nobody knows who sits where.
  QCOMPARE(rulingLines(shot, {"Nerea"}).first(), QString("The first player plays on."));
  // An overruled ruling stands beside what the referee had ruled.
  RuledShot overruled = *rulingFromText(shot.ruling->content);
  overruled.ruling.next.value = Seat::Second;
  overruled.ruling.overruledBy = "Cleo";
  ValueCorrection correction;
  correction.field = toText(ShotField::Ruling);
  correction.measured = shot.ruling->content;
  shot.corrections = {correction};
  shot.ruling->content = rulingText(overruled);
  QCOMPARE(rulingLines(shot, {"Nerea", "Ivo"}).mid(0, 3),
           (QStringList{"Ivo is at the table. Overruled by Cleo.", "Certain", "Ruled before: Nerea plays on."}));
  QCOMPARE(outcomeLines(shot).size(), 1);
  shot.ruling->content = "{}";
  QVERIFY(rulingLines(shot, {}).isEmpty());
}

void RulingSentenceTest::everyPieceHasWordsInEnglishAndGerman() {
  const QStringList english = allPieces();
  loadTranslationFiles();
  QTranslator german;
  QVERIFY(german.load(QStringLiteral(":/translations/ferrule_de.qm")));
  QVERIFY(QCoreApplication::installTranslator(&german));
  const QStringList translated = allPieces();
  const QString sentence =
      rulingSentence(ruledOn(playing(Game::NineBall), shotOf({contact(2), fall(0, PocketName::FootLeft)})), kNames);
  QCoreApplication::removeTranslator(&german);
  for (qsizetype i = 0; i < english.size(); ++i) {
    QVERIFY2(!english[i].isEmpty(), qPrintable(QString("piece %1 has no words").arg(i)));
    QVERIFY2(english[i] != translated[i], qPrintable(english[i]));
  }
  QCOMPARE(sentence, QString("Foul: die Weiße fiel oder verließ den Tisch und die 2 wurde zuerst getroffen. Ivo ist am "
                             "Tisch, Weiße in der Hand."));
}

FERRULE_TEST(RulingSentenceTest)
#include "ruling_sentence_test.moc"
