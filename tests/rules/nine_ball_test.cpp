// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Cases of nine-ball by the world rules of play, section 2, as effective 2008 and 2016.
class NineBallTest : public QObject {
  Q_OBJECT
 private slots:
  void aShotIsRuledBySection2_data();
  void aShotIsRuledBySection2();
  void threeFoulsInARowLoseTheRackOfAPlayerWhoWasTold();
  void aFairShotEndsARowOfFouls();
  void theThreePointBreakNeedsThreeBallsPastTheString();
  void onlyTheShotAfterTheBreakMayBeAPushOut();
  void aPushOutThatNobodyHeardIsAsked();
};

namespace {

const RuleSet kWorld = worldRules(Game::NineBall);

}  // namespace

void NineBallTest::aShotIsRuledBySection2_data() {
  addCaseColumns();
  const auto& row = addCase;
  row("N01 a fair break", "break", "", "FC 1, OBR 4", "next second | as-it-lies | certain", "2.3(b)");
  row("N02 too weak a break", "break", "", "FC 1, OBR 3", "break-requirement | next second | in-hand | proposed",
      "2.3(b)");
  row("N03 the wrong ball", "break", "", "FC 2, P 6@FL", "wrong-ball-first | next second | in-hand | out 6 | certain",
      "6.2, 2.7");
  row("N04 the nine", "break", "", "FC 1, P 9@FR", "first wins: nine-pocketed | out 9 | certain", "2.5");
  row("N05 the nine and a scratch", "break", "", "FC 1, P 9@FR, CB@SL",
      "scratch | next second | in-hand | spot 9 | certain", "2.6, 6.1");
  row("N06 a push-out to nowhere", "second", "push-out", "",
      "next second | as-it-lies | second may accept/hand-back | certain", "2.4");
  row("N07 balls down on a push-out", "second", "push-out", "P 9@FR, P 4@SL",
      "next second | as-it-lies | second may accept/hand-back | spot 9 | out 4 | certain", "2.4, 2.6");
  row("N08 a scratch on a push-out", "second", "push-out", "CB@HL", "scratch | next second | in-hand | certain", "6.1");
  row("N09 any ball keeps the turn", "low 3", "", "FC 3, P 7@SR", "next first | as-it-lies | out 7 | certain", "2.5");
  row("N10 the nine by a combination", "low 3", "", "FC 3, P 9@FL", "first wins: nine-pocketed | out 9 | certain",
      "2.5");
  row("N11 the nine off the wrong ball", "low 3", "", "FC 5, P 9@FL",
      "wrong-ball-first | next second | in-hand | spot 9 | certain", "6.2, 2.6");
  row("N12 a ball off the table", "low 3", "", "FC 3, OFF 6",
      "ball-off-table | next second | in-hand | out 6 | proposed", "6.5");
  row("N13 the nine off the table", "low 3", "", "FC 3, OFF 9",
      "ball-off-table | next second | in-hand | spot 9 | proposed", "6.5, 2.6");
  row("a miss", "low 3", "", "FC 3, R 1", "next second | as-it-lies | certain", "2.5");
  row("a ball down on the break", "break", "", "FC 1, P 4@FR", "next first | as-it-lies | out 4 | certain", "2.3");
}

void NineBallTest::aShotIsRuledBySection2() {
  checkCase(kWorld);
}

/// N14: 2.8, 6.14.
void NineBallTest::threeFoulsInARowLoseTheRackOfAPlayerWhoWasTold() {
  GameState before = stateOf(kWorld, "low 3");
  before.foulsInARow = {2, 0};
  const ShotEvents wrong = shotOf(Game::NineBall, "", "FC 5, R 1");
  const Ruling untold = rule(before, wrong);
  QCOMPARE(summaryOf(before, untold), QString("wrong-ball-first | next second | in-hand | ask"));
  QCOMPARE(apply(before, untold).foulsInARow.at(0), 2);
  QVERIFY(sectionsOf(untold).contains("6.14"));

  const GameState told = apply(before, rule(before, Announcement{AnnouncementKind::Warning, Seat::First}));
  QVERIFY(told.warned.at(0));
  const Ruling third = rule(told, wrong);
  QCOMPARE(summaryOf(told, third), QString("wrong-ball-first | second wins: three-fouls | certain"));
  QVERIFY(sectionsOf(third).contains("6.14"));

  RuleSet lenient = kWorld;
  lenient.house.threeFoulsLose = false;
  GameState counted = told;
  counted.rules = lenient;
  QVERIFY(!rule(counted, wrong).result);
}

void NineBallTest::aFairShotEndsARowOfFouls() {
  GameState before = stateOf(kWorld, "low 3");
  before.foulsInARow = {2, 1};
  before.warned = {true, false};
  const GameState after = apply(before, rule(before, shotOf(Game::NineBall, "", "FC 3, R 1")));
  QCOMPARE(after.foulsInARow, (std::array<int, 2>{0, 1}));
  QVERIFY(!after.warned.at(0));
}

/// N15: a regulation of events.
void NineBallTest::theThreePointBreakNeedsThreeBallsPastTheString() {
  RuleSet rules = kWorld;
  rules.house.threePointBreak = true;
  const GameState before = stateOf(rules, "break");
  ShotEvents shot = shotOf(Game::NineBall, "", "FC 1, P 2@FR, OBR 4");
  shot.pastHeadString = std::vector<BallName>{BallName(5)};
  QCOMPARE(summaryOf(before, rule(before, shot)),
           QString("illegal break | next second | as-it-lies | second may accept/hand-back | out 2 | proposed"));
  shot.pastHeadString = std::vector<BallName>{BallName(5), BallName(7)};
  QCOMPARE(summaryOf(before, rule(before, shot)), QString("next first | as-it-lies | out 2 | certain"));
  // A ball that passed the string and then fell counts once.
  shot.pastHeadString = std::vector<BallName>{BallName(5), BallName(2)};
  QVERIFY(rule(before, shot).illegalBreak);
  shot.pastHeadString.reset();
  const Ruling unknown = rule(before, shot);
  QVERIFY(!unknown.illegalBreak);
  QCOMPARE(unknown.sureness, Verdict::Ask);
  QCOMPARE(unknown.questions.at(0).doubt.kind, DoubtKind::PastString);
}

/// 2.4: after a fair break by whoever plays then, once, and not after a foul.
void NineBallTest::onlyTheShotAfterTheBreakMayBeAPushOut() {
  const GameState opening = stateOf(kWorld, "break");
  const GameState fair = apply(opening, rule(opening, shotOf(Game::NineBall, "", "FC 1, OBR 4")));
  QVERIFY(fair.pushOutAllowed);
  QCOMPARE(fair.atTable, Seat::Second);
  const ShotEvents pushed = shotOf(Game::NineBall, "push-out", "FC 5");
  const Ruling ruling = rule(fair, pushed);
  QVERIFY(ruling.pushOut);
  QVERIFY(!apply(fair, ruling).pushOutAllowed);
  QCOMPARE(apply(fair, ruling).atTable, Seat::First);
  QCOMPARE(apply(fair, ruling, {OptionKind::HandBack}).atTable, Seat::Second);

  const GameState fouled = apply(opening, rule(opening, shotOf(Game::NineBall, "", "FC 2, OBR 4")));
  QVERIFY(!fouled.pushOutAllowed);
  const GameState later = stateOf(kWorld, "play");
  QCOMPARE(rule(later, pushed).fouls.at(0).kind, FoulKind::WrongBallFirst);
}

/// N16: an ordinary foul where a person was there; a camera hears nothing and asks.
void NineBallTest::aPushOutThatNobodyHeardIsAsked() {
  const GameState before = stateOf(kWorld, "second");
  ShotEvents shot = shotOf(Game::NineBall, "", "FC 5, R 1");
  shot.witness = Witness::Person;
  QCOMPARE(summaryOf(before, rule(before, shot)), QString("wrong-ball-first | next second | in-hand | certain"));
  shot.witness = Witness::Camera;
  const Ruling filmed = rule(before, shot);
  QCOMPARE(filmed.fouls.at(0).kind, FoulKind::WrongBallFirst);
  QCOMPARE(filmed.questions.at(0).doubt.kind, DoubtKind::PushOutUnknown);
  QVERIFY(sectionsOf(filmed).contains("2.4"));
}

FERRULE_TEST(NineBallTest)
#include "nine_ball_test.moc"
