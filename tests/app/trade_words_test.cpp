// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/words/trade_words.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

/// Shots as rows of a list tell them.
class TradeWordsTest : public QObject {
  Q_OBJECT
 private slots:
  void aBreakNamesAllThatFell();
  void aPotNamesWhatFellBesideIt();
  void aMissTellsItsSide();
  void withoutATargetTheFirstObjectBallThatFellStandsForTheShot();
  void thatTheCueBallFellIsToldOnce();
};

namespace {

ShotReading shotThat(Outcome outcome, std::vector<PocketedBall> fell) {
  ShotReading shot;
  shot.outcome = outcome;
  shot.pocketed = std::move(fell);
  return shot;
}

constexpr PocketName kFootLeft = PocketName::FootLeft;
constexpr PocketName kHeadRight = PocketName::HeadRight;

}  // namespace

void TradeWordsTest::aBreakNamesAllThatFell() {
  QCOMPARE(happenedWords(shotThat(Outcome::Break, {})), QString("break"));
  QCOMPARE(happenedWords(shotThat(Outcome::Break, {{BallName(5), kFootLeft}, {kCueBall, kHeadRight}})),
           QString("break; pocketed: 5, cue"));
}

void TradeWordsTest::aPotNamesWhatFellBesideIt() {
  ShotReading shot = shotThat(Outcome::Pot, {{BallName(7), kHeadRight}, {BallName(3), kFootLeft}});
  shot.target.emplace();
  shot.target->ball = BallName(3);
  shot.target->pocket = kFootLeft;
  QCOMPARE(happenedWords(shot), QString("3 to foot-left, made; also pocketed: 7"));
}

void TradeWordsTest::aMissTellsItsSide() {
  ShotReading shot = shotThat(Outcome::Miss, {});
  shot.target.emplace();
  shot.target->ball = BallName(3);
  shot.target->pocket = kFootLeft;
  shot.target->missSide = MissSide::Under;
  QCOMPARE(happenedWords(shot), QString("3 to foot-left, missed thick"));
}

void TradeWordsTest::withoutATargetTheFirstObjectBallThatFellStandsForTheShot() {
  QCOMPARE(happenedWords(shotThat(Outcome::Pot, {{BallName(9), kFootLeft}, {BallName(4), kHeadRight}})),
           QString("9 to foot-left, made; also pocketed: 4"));
}

void TradeWordsTest::thatTheCueBallFellIsToldOnce() {
  QCOMPARE(happenedWords(shotThat(Outcome::Scratch, {{kCueBall, kFootLeft}, {BallName(4), kHeadRight}})),
           QString("4 to head-right, scratch"));
}

FERRULE_TEST(TradeWordsTest)
#include "trade_words_test.moc"
