// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Cases of eight-ball by the world rules of play, effective 15 March 2016, whose sections are named beside each.
class EightBallTest : public QObject {
  Q_OBJECT
 private slots:
  void theBreakIsRuledBySection3_3_data();
  void theBreakIsRuledBySection3_3();
  void aShotIsRuledBySections3_4To3_9_data();
  void aShotIsRuledBySections3_4To3_9();
  void onAnOpenTableBeforeTheEditionOf2008TheEightMayBeMetFirst();
  void aBallFrozenToARailMustLeaveIt();
  void playFromBehindTheHeadStringMustGoForward();
  void aCueBallInHandBehindTheStringLiesBehindIt();
  void aSplitHitTooCloseToTellIsAskedAndNoFoulUntilThen();
  void aBallThatFallsBetweenShotsIsPutBack();
  void houseRulesChangeWhatTheyName();
};

namespace {

const RuleSet kWorld = worldRules(Game::EightBall);

ShotEvents withPlaces(ShotEvents shot, Position before) {
  shot.before = std::move(before);
  return shot;
}

Position allBallsAt(TablePoint others, Position known) {
  for (const BallName ball : ballsOfGame(Game::EightBall)) {
    if (std::ranges::find(known, ball, &BallAt::ball) == known.end()) known.push_back({ball, others});
  }
  return known;
}

}  // namespace

void EightBallTest::theBreakIsRuledBySection3_3_data() {
  addCaseColumns();
  const auto row = [](const char* id, const char* events, const char* expected, const char* sections) {
    QTest::newRow(id) << "break"
                      << "" << events << expected << sections;
  };
  row("E01 four to a rail", "FC 1, OBR 4", "next second | as-it-lies | open | proposed", "3.3(d)");
  row("E02 three to a rail", "FC 1, OBR 3",
      "illegal break | next second | as-it-lies | second may accept/rack-again/opponent-breaks | open | proposed",
      "3.3(d)");
  row("E03 a ball down", "FC 1, P 3@SL, OBR 1", "next first | as-it-lies | open | out 3 | certain", "3.3(c)");
  row("E04 the eight down", "FC 1, P 8@FR",
      "next first | as-it-lies | first may spot-and-play/rack-again | open | spot 8 | certain", "3.3(e)");
  row("E05 the eight and a scratch", "FC 1, P 8@FR, CB@HL",
      "scratch | next second | in-hand-behind-string | second may spot-and-play/rack-again | open | spot 8 | certain",
      "3.3(f)");
  row("E06 a scratch", "FC 1, P 2@FL, CB@HL", "scratch | next second | in-hand-behind-string | open | out 2 | certain",
      "3.3(h), 6.1");
  row("E07 a ball off the table", "FC 1, OFF 11, OBR 6",
      "ball-off-table | next second | as-it-lies | second may accept/take-in-hand | open | out 11 | proposed",
      "3.3(g), 6.5");
  row("E08 the eight off the table", "FC 1, OFF 8, OBR 5",
      "ball-off-table | next second | as-it-lies | second may accept/take-in-hand | open | spot 8 | proposed",
      "3.3(g), 3.7");
  row("E09 one of each", "FC 1, P 1@FL, P 9@FR", "next first | as-it-lies | open | out 1 9 | certain", "3.3(c)");
  row("the rack is not hit", "rail",
      "no-contact | next second | as-it-lies | second may accept/take-in-hand | open | proposed", "3.3(h)");
  row("the eight down, the cue ball off the table", "FC 1, P 8@FR, OFF CB",
      "scratch | next second | in-hand-behind-string | second may spot-and-play/rack-again | open | spot 8 | ask",
      "3.3(f)");
  row("too weak, and a scratch", "FC 1, OBR 2, CB@HL",
      "scratch | illegal break | next second | in-hand-behind-string | second may "
      "take-in-hand/rack-again/opponent-breaks | open | ask",
      "3.3(h)");
}

void EightBallTest::theBreakIsRuledBySection3_3() {
  checkCase(kWorld);
}

void EightBallTest::aShotIsRuledBySections3_4To3_9_data() {
  addCaseColumns();
  const auto& row = addCase;
  row("E10 a group is taken", "open", "c=5@FR", "FC 5, P 5@FR",
      "next first | as-it-lies | first solids | out 5 | certain", "3.4, 3.5");
  row("E11 by a combination", "open", "c=12@SL", "FC 3, P 12@SL",
      "next first | as-it-lies | first stripes | out 12 | certain", "3.4, 3.5");
  row("E12 off the eight", "open", "c=12@SL", "FC 8, P 12@SL",
      "wrong-ball-first | next second | in-hand | open | out 12 | certain", "6.2, 3.9");
  row("E13 another pocket", "open", "c=5@FR", "FC 5, P 5@FL", "next second | as-it-lies | open | out 5 | certain",
      "3.5");
  row("E14 and one more", "open", "c=5@FR", "FC 5, P 5@FR, P 12@SL",
      "next first | as-it-lies | first solids | out 5 12 | certain", "3.4");
  row("E15 a miss", "S", "c=2@SR", "FC 2, R 1, P -", "next second | as-it-lies | first solids | certain", "3.5");
  row("E16 the other group first", "S", "c=2@SR", "FC 10, R 1",
      "wrong-ball-first | next second | in-hand | first solids | certain", "6.2, 3.9");
  row("E17 no rail", "S", "c=2@SR", "FC 2, R 0, P -", "no-rail | next second | in-hand | first solids | proposed",
      "6.3");
  row("E18 a rail before only", "S", "c=2@SR", "rail, FC 2, R 0",
      "no-rail | next second | in-hand | first solids | proposed", "6.3");
  row("E20 potted and scratched", "S", "c=2@SR", "FC 2, P 2@SR, CB@FL",
      "scratch | next second | in-hand | first solids | out 2 | certain", "6.1, 3.9");
  row("E21 the eight early", "S: 1 2 3 4", "c=2@SR", "FC 2, P 2@SR, P 8@HL",
      "second wins: eight-early | first solids | out 2 8 | certain", "3.8(b)");
  row("E22 with the last of the group", "S: 2", "c=2@SR", "FC 2, P 2@SR, P 8@FR",
      "second wins: eight-early | first solids | out 2 8 | certain", "3.8(b)");
  row("E23 the eight as called", "clr", "c=8@FR", "FC 8, P 8@FR",
      "first wins: eight-pocketed | first solids | out 8 | certain", "3.5");
  row("E24 in another pocket", "clr", "c=8@FR", "FC 8, P 8@FL",
      "second wins: eight-wrong-pocket | first solids | out 8 | certain", "3.8(c)");
  row("E25 and the cue ball", "clr", "c=8@FR", "FC 8, P 8@FR, CB@HL",
      "scratch | second wins: eight-on-foul | first solids | out 8 | certain", "3.8(a), 6.1");
  row("E26 the cue ball alone", "clr", "c=8@FR", "FC 8, P -, CB@HL",
      "scratch | next second | in-hand | first solids | certain", "3.9, 6.1");
  row("E27 off the wrong ball", "clr", "c=8@FR", "FC 10, P 8@FR",
      "wrong-ball-first | second wins: eight-on-foul | first solids | out 8 | certain", "6.2, 3.8(a)");
  row("E28 the eight off the table", "T", "", "FC 9, OFF 8",
      "ball-off-table | second wins: eight-off-table | first stripes | out 8 | proposed", "3.8(d)");
  row("E29 potted on a safety", "S", "safety", "FC 2, P 2@FR",
      "next second | as-it-lies | first solids | out 2 | certain", "3.6");
  row("E30 a ball off the table", "S", "c=2@SR", "FC 2, OFF 2",
      "ball-off-table | next second | in-hand | first solids | out 2 | proposed", "6.5, 3.9");
  row("E31 only the other's ball", "S", "c=2@SR", "FC 2, P 10@FL",
      "next second | as-it-lies | first solids | out 10 | certain", "3.5");
  row("E32 the eight on a safety", "clr", "safety", "FC 8, P 8@FR",
      "second wins: eight-wrong-pocket | first solids | out 8 | certain", "3.8(c)");
  row("E36 the eight on an open table", "open", "c=5@FR", "FC 5, P 5@FR, P 8@FL",
      "second wins: eight-early | open | out 5 8 | certain", "3.8(b)");
  row("no ball met", "S", "c=2@SR", "rail", "no-contact | next second | in-hand | first solids | proposed", "6.3");
  row("an obvious shot needs no call", "S", "", "FC 2, P 2@SR",
      "next first | as-it-lies | first solids | out 2 | proposed", "3.5");
  row("what was called in a combination is asked", "S", "", "FC 2, P 3@SR",
      "next first | as-it-lies | first solids | out 3 | ask", "1.6");
  row("a win is never taken from an unspoken call", "clr", "", "FC 8, P 8@FR",
      "first wins: eight-pocketed | first solids | out 8 | ask", "1.6, 3.5");
}

void EightBallTest::aShotIsRuledBySections3_4To3_9() {
  checkCase(kWorld);
}

/// E12 by the texts before 2008: no foul, no group, the turn ends. From memory.
void EightBallTest::onAnOpenTableBeforeTheEditionOf2008TheEightMayBeMetFirst() {
  const GameState before = stateOf(worldRules(Game::EightBall, Edition::Before2008), "open");
  const Ruling ruling = rule(before, shotOf(Game::EightBall, "c=12@SL", "FC 8, P 12@SL"));
  QCOMPARE(summaryOf(before, ruling), QString("next second | as-it-lies | open | out 12 | certain"));
}

/// E19: 6.3 with 8.4.
void EightBallTest::aBallFrozenToARailMustLeaveIt() {
  const GameState before = stateOf(kWorld, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", "FC 2, 2 same rail");
  QCOMPARE(summaryOf(before, rule(before, shot)), QString("next second | as-it-lies | first solids | certain"));
  shot.frozen = {{BallName(2), CushionName::Foot}};
  const Ruling frozen = rule(before, shot);
  QCOMPARE(summaryOf(before, frozen), QString("no-rail | next second | in-hand | first solids | proposed"));
  QVERIFY(sectionsOf(frozen).contains("6.3"));
  // Back again after another cushion, it was driven to a rail.
  ShotEvents returned = shotOf(Game::EightBall, "c=2@SR", "FC 2, 2 same rail, R 1");
  returned.events[2].ball = BallName(2);
  returned.frozen = shot.frozen;
  QVERIFY(rule(before, returned).fouls.empty());
}

/// E33: 6.11.
void EightBallTest::playFromBehindTheHeadStringMustGoForward() {
  GameState before = stateOf(kWorld, "open");
  before.cueBall = CueBallPlace::InHandBehindString;
  const double width_m = 1.270;
  // 0.40 and 0.30 widths from the head cushion; the string is at 0.50.
  const TablePoint target{-width_m + 0.40 * width_m, 0.0};
  const Position places = allBallsAt({0.5, 0.2}, {{kCueBall, {-width_m + 0.20 * width_m, 0.0}}, {BallName(3), target}});
  ShotEvents shot = withPlaces(shotOf(Game::EightBall, "c=3@HL", "FC 3, R 1"), places);
  shot.events[0].position = {target.x - 0.057, 0.0};
  const Ruling ruling = rule(before, shot);
  QCOMPARE(summaryOf(before, ruling), QString("bad-play-from-behind | next second | in-hand | open | certain"));
  QVERIFY(sectionsOf(ruling).contains("6.11"));

  // By way of the foot cushion it is fair.
  ShotEvents around = withPlaces(shotOf(Game::EightBall, "c=3@HL", "rail, FC 3, R 1"), places);
  around.events[0].position = {1.24, 0.0};
  around.events[1].position = {target.x + 0.057, 0.0};
  QVERIFY(rule(before, around).fouls.empty());
  // So is a ball past the string.
  ShotEvents past = shot;
  for (BallAt& at : past.before) {
    if (at.ball == BallName(3)) at.position.x = -0.5;
  }
  QVERIFY(rule(before, past).fouls.empty());
  // Too close to the string to tell: asked.
  ShotEvents close = shot;
  for (BallAt& at : close.before) {
    if (at.ball == BallName(3)) at.position.x = before.lines.headString_m - 0.003;
  }
  const Ruling asked = rule(before, close);
  QVERIFY(asked.fouls.empty());
  QCOMPARE(asked.sureness, Verdict::Ask);
}

/// 6.10; the line itself is not part of the area behind it.
void EightBallTest::aCueBallInHandBehindTheStringLiesBehindIt() {
  const GameState before = stateOf(kWorld, "break");
  const auto ruled = [&](double beyond_m) {
    const Position places = allBallsAt({0.8, 0.0}, {{kCueBall, {before.lines.headString_m + beyond_m, 0.1}}});
    return rule(before, withPlaces(shotOf(Game::EightBall, "", "FC 1, OBR 5"), places));
  };
  QVERIFY(ruled(-0.01).fouls.empty());
  QCOMPARE(ruled(-0.01).sureness, Verdict::Certain);
  QCOMPARE(ruled(0.01).fouls.at(0).kind, FoulKind::BadPlacement);
  QVERIFY(sectionsOf(ruled(0.01)).contains("6.10"));
  QVERIFY(ruled(0.001).fouls.empty());
  QCOMPARE(ruled(0.001).sureness, Verdict::Ask);
  QCOMPARE(ruled(0.001).questions.at(0).doubt.kind, DoubtKind::Placement);
}

/// E34: regulation 27 of 2016: undetermined, the legal ball counts as the first.
void EightBallTest::aSplitHitTooCloseToTellIsAskedAndNoFoulUntilThen() {
  const GameState before = stateOf(kWorld, "S");
  for (const char* read : {"FC 2, R 1", "FC 10, R 1"}) {
    ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", read);
    shot.doubts = {{DoubtKind::SplitHit, BallName(2), BallName(10)}};
    const Ruling ruling = rule(before, shot);
    QCOMPARE(summaryOf(before, ruling), QString("next second | as-it-lies | first solids | ask"));
    QVERIFY(sectionsOf(ruling).contains("regulation 27"));
    QCOMPARE(ruling.questions.size(), std::size_t{1});
  }
  // Where both may be met first there is nothing to ask.
  ShotEvents either = shotOf(Game::EightBall, "c=2@SR", "FC 2, R 1");
  either.doubts = {{DoubtKind::SplitHit, BallName(2), BallName(3)}};
  QCOMPARE(rule(before, either).sureness, Verdict::Certain);
}

/// E35: 1.7.
void EightBallTest::aBallThatFallsBetweenShotsIsPutBack() {
  const GameState before = stateOf(kWorld, "S");
  ShotEvents fall = shotOf(Game::EightBall, "", "P 14@FL");
  fall.struck = false;
  const Ruling ruling = rule(before, fall);
  QCOMPARE(summaryOf(before, ruling), QString("next first | as-it-lies | first solids | restore 14 | proposed"));
  QVERIFY(sectionsOf(ruling).contains("1.7"));
  QCOMPARE(apply(before, ruling), before);
}

void EightBallTest::houseRulesChangeWhatTheyName() {
  const auto summary = [](auto&& change, const char* state, const char* call, const char* events) {
    RuleSet rules = kWorld;
    change(rules.house);
    const GameState before = stateOf(rules, state);
    return summaryOf(before, rule(before, shotOf(Game::EightBall, call, events)));
  };
  QCOMPARE(summary([](HouseRules& house) { house.inHandOnlyAfterScratch = true; }, "S", "c=2@SR", "FC 10, R 1"),
           QString("wrong-ball-first | next second | as-it-lies | first solids | certain"));
  QCOMPARE(summary([](HouseRules& house) { house.scratchAlwaysBehindString = true; }, "S", "c=2@SR", "FC 2, CB@HL"),
           QString("scratch | next second | in-hand-behind-string | first solids | certain"));
  QCOMPARE(
      summary([](HouseRules& house) { house.breakScratchBehindString = false; }, "break", "", "FC 1, P 2@FL, CB@HL"),
      QString("scratch | next second | in-hand | open | out 2 | certain"));
  QCOMPARE(summary([](HouseRules& house) { house.eightOnBreakWins = true; }, "break", "", "FC 1, P 8@FR"),
           QString("first wins: eight-on-break | open | out 8 | certain"));
  QCOMPARE(
      summary([](HouseRules& house) { house.eightAndScratchOnBreakLoses = true; }, "break", "", "FC 1, P 8@FR, CB@HL"),
      QString("scratch | second wins: eight-and-scratch-on-break | open | out 8 | certain"));
  QCOMPARE(summary([](HouseRules& house) { house.scratchOnEightLoses = true; }, "clr", "c=8@FR", "FC 8, CB@HL"),
           QString("scratch | second wins: scratch-on-eight | first solids | certain"));
  QCOMPARE(summary([](HouseRules& house) { house.calls = CallRule::None; }, "S", "", "FC 2, P 3@SR"),
           QString("next first | as-it-lies | first solids | out 3 | certain"));
  QCOMPARE(summary([](HouseRules& house) { house.calls = CallRule::EightOnly; }, "clr", "", "FC 8, P 8@SR"),
           QString("first wins: eight-pocketed | first solids | out 8 | ask"));
  QCOMPARE(summary([](HouseRules& house) { house.ballsToRailOnBreak = 3; }, "break", "", "FC 1, OBR 3"),
           QString("next second | as-it-lies | open | proposed"));
}

FERRULE_TEST(EightBallTest)
#include "eight_ball_test.moc"
