// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>

#include "core/rules/testimony.h"
#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What a camera over the table cannot see is asked for, and an answer settles it.
class QuestionsTest : public QObject {
  Q_OBJECT
 private slots:
  void foulsThatNoCameraSeesAreNamedOpen();
  void aDoubtIsAskedOnlyWhereItMatters_data();
  void aDoubtIsAskedOnlyWhereItMatters();
  void aDoubleHitIsAskedWhereTheBallsLayClose();
  void aBallThatLayAtTheRailMayHaveBeenFrozen();
  void otherBallsOnTheTableThanExpectedAreAsked();
  void aFrameJoinedInTheMiddleAsksForTheGroups();
  void afterAnOpenQuestionNothingIsCertain();
  void whatAPersonSawIsCertain();
  void anAnswerSettlesItsQuestion_data();
  void anAnswerSettlesItsQuestion();
  void aShotOutOfTurnIsTheOpponentsGain();
  void oneGroupGoneFromAnOpenTableIsAsked();
};

namespace {

const RuleSet kWorld = worldRules(Game::EightBall);

bool asks(const Ruling& ruling, DoubtKind kind) {
  return std::ranges::any_of(ruling.questions, [&](const Question& question) { return question.doubt.kind == kind; });
}

}  // namespace

void QuestionsTest::foulsThatNoCameraSeesAreNamedOpen() {
  const GameState before = stateOf(kWorld, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", "FC 2, P 2@SR");
  QCOMPARE(rule(before, shot).unseen, foulsUnseenFromAbove());
  const auto said = witnessed(shot, {{.kind = TestimonyKind::Foul, .holds = false, .foul = FoulKind::NoFoot}});
  QVERIFY(!std::ranges::count(rule(before, said).unseen, FoulKind::NoFoot));
  shot.witness = Witness::Person;
  QVERIFY(rule(before, shot).unseen.empty());
}

void QuestionsTest::aDoubtIsAskedOnlyWhereItMatters_data() {
  QTest::addColumn<QString>("events");
  QTest::addColumn<int>("kind");
  QTest::addColumn<int>("ball");
  QTest::addColumn<int>("other");
  QTest::addColumn<QString>("expected");
  const auto row = [](const char* name, const char* events, DoubtKind kind, int ball, int other, const char* expected) {
    QTest::newRow(name) << events << static_cast<int>(kind) << ball << other << expected;
  };
  row("a near rail decides", "FC 2", DoubtKind::NearRail, 2, 0, "next second | as-it-lies | first solids | ask");
  row("a second rail does not", "FC 2, R 1", DoubtKind::NearRail, 2, 0,
      "next second | as-it-lies | first solids | certain");
  row("a ball that may have fallen", "FC 2, R 1", DoubtKind::PocketUnsure, 2, 0,
      "next second | as-it-lies | first solids | ask");
  row("a ball that may have stayed up", "FC 2, P 2@SR", DoubtKind::PocketUnsure, 2, 0,
      "next first | as-it-lies | first solids | out 2 | ask");
  row("a lost ball may be off", "FC 2, R 1", DoubtKind::BallLost, 5, 0,
      "next second | as-it-lies | first solids | ask");
  row("a ball that jumped back", "FC 2, R 1", DoubtKind::JumpedBack, 5, 0,
      "next second | as-it-lies | first solids | ask");
  row("a ball moved by hand", "FC 2, R 1", DoubtKind::MovedByHand, 5, 0,
      "next second | as-it-lies | first solids | ask");
  row("balls that may still have moved", "FC 2, R 1", DoubtKind::BallsMoving, 0, 0,
      "next second | as-it-lies | first solids | ask");
  row("a name within the group", "FC 2, R 1", DoubtKind::NameUnsure, 2, 3,
      "next second | as-it-lies | first solids | certain");
  row("a name of the other group", "FC 10, R 1", DoubtKind::NameUnsure, 10, 2,
      "next second | as-it-lies | first solids | ask");
  row("an end that was not seen", "FC 2, R 1", DoubtKind::Unfinished, 0, 0,
      "next second | as-it-lies | first solids | ask");
  row("a foul already made", "FC 10, CB@FL", DoubtKind::SplitHit, 10, 2,
      "scratch | next second | in-hand | first solids | certain");
}

void QuestionsTest::aDoubtIsAskedOnlyWhereItMatters() {
  QFETCH(QString, events);
  QFETCH(int, kind);
  QFETCH(int, ball);
  QFETCH(int, other);
  QFETCH(QString, expected);
  const GameState before = stateOf(kWorld, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", events);
  Doubt doubt{static_cast<DoubtKind>(kind), BallName(ball), std::nullopt};
  if (other > 0) doubt.other = BallName(other);
  shot.doubts = {doubt};
  QCOMPARE(summaryOf(before, rule(before, shot)), expected);
}

/// 6.7 cannot be seen from above; only where the balls lay close may it have happened.
void QuestionsTest::aDoubleHitIsAskedWhereTheBallsLayClose() {
  GameState before = stateOf(kWorld, "S: 2");
  before.onTable = {BallName(2), BallName(8)};
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", "FC 2, R 1");
  shot.before = {{kCueBall, {0.0, 0.0}}, {BallName(2), {0.067, 0.0}}, {BallName(8), {0.5, 0.3}}};
  const Ruling near = rule(before, shot);
  QVERIFY(asks(near, DoubtKind::SmallGap));
  QVERIFY(near.fouls.empty());
  QVERIFY(sectionsOf(near).contains("6.7"));
  shot.before[1].position.x = 0.2;
  QVERIFY(!asks(rule(before, shot), DoubtKind::SmallGap));
}

/// 8.4: frozen only when declared, and a declaration is heard by people only.
void QuestionsTest::aBallThatLayAtTheRailMayHaveBeenFrozen() {
  GameState before = stateOf(kWorld, "S: 2");
  before.onTable = {BallName(2), BallName(8)};
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", "FC 2, 2 same rail");
  const double rail_m = 1.27 - before.lines.ballRadius_m;
  shot.before = {{kCueBall, {0.0, 0.0}}, {BallName(2), {rail_m - 0.001, 0.0}}, {BallName(8), {0.5, 0.3}}};
  shot.events[1].position = {rail_m, 0.01};
  const Ruling at = rule(before, shot);
  QVERIFY(asks(at, DoubtKind::FrozenToRail));
  QVERIFY(at.fouls.empty());
  const auto no = witnessed(shot, {{.kind = TestimonyKind::Frozen, .holds = false, .ball = BallName(2)}});
  QCOMPARE(rule(before, no).sureness, Verdict::Certain);
  const auto yes = witnessed(
      shot, {{.kind = TestimonyKind::Frozen, .holds = true, .ball = BallName(2), .cushion = CushionName::Foot}});
  QCOMPARE(rule(before, yes).fouls.at(0).kind, FoulKind::NoRail);
  shot.before[1].position.x = rail_m - 0.01;
  QVERIFY(!asks(rule(before, shot), DoubtKind::FrozenToRail));
}

void QuestionsTest::otherBallsOnTheTableThanExpectedAreAsked() {
  const GameState before = stateOf(kWorld, "S: 2");
  ShotEvents shot = shotOf(Game::EightBall, "c=8@SR", "FC 8, P 8@SR");
  shot.before = {{kCueBall, {0.0, 0.0}}, {BallName(8), {0.5, 0.3}}, {BallName(9), {0.5, -0.3}}};
  const Ruling ruling = rule(before, shot);
  // The 2 is gone, so the 8 is on; the film is the truth of what lies there.
  QCOMPARE(ruling.result.value().value.winner, Seat::First);
  QVERIFY(asks(ruling, DoubtKind::BallsDiffer));
  QCOMPARE(ruling.sureness, Verdict::Ask);
}

void QuestionsTest::aFrameJoinedInTheMiddleAsksForTheGroups() {
  const GameState before = joinedFrame(kWorld, {BallName(2), BallName(8), BallName(12)});
  const Ruling ruling = rule(before, shotOf(Game::EightBall, "", "FC 12, P 12@FL"));
  QVERIFY(asks(ruling, DoubtKind::GroupsUnknown));
  QVERIFY(ruling.fouls.empty());
  const GameState after = apply(before, ruling);
  QVERIFY(after.groupsKnown);
  QCOMPARE(groupOf(after, Seat::First), std::optional(Group::Stripes));
  // In nine-ball the table itself says what is on.
  const GameState nine = joinedFrame(worldRules(Game::NineBall), {BallName(4), BallName(9)});
  QCOMPARE(rule(nine, shotOf(Game::NineBall, "", "FC 4, P 4@FL")).sureness, Verdict::Certain);
}

void QuestionsTest::afterAnOpenQuestionNothingIsCertain() {
  GameState before = stateOf(kWorld, "S");
  before.unsettled = true;
  QCOMPARE(rule(before, shotOf(Game::EightBall, "c=2@SR", "FC 2, P 2@SR")).sureness, Verdict::Proposed);
}

void QuestionsTest::whatAPersonSawIsCertain() {
  const GameState before = stateOf(kWorld, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", "FC 2");
  shot.witness = Witness::Person;
  QCOMPARE(summaryOf(before, rule(before, shot)), QString("no-rail | next second | in-hand | first solids | certain"));
}

void QuestionsTest::anAnswerSettlesItsQuestion_data() {
  QTest::addColumn<QString>("events");
  QTest::addColumn<int>("doubt");
  QTest::addColumn<int>("answer");
  QTest::addColumn<QString>("yes");
  QTest::addColumn<QString>("no");
  const auto row = [](const char* name, const char* events, DoubtKind doubt, TestimonyKind answer, const char* yes,
                      const char* no) {
    QTest::newRow(name) << events << static_cast<int>(doubt) << static_cast<int>(answer) << yes << no;
  };
  row("a rail", "FC 2", DoubtKind::NearRail, TestimonyKind::RailAfter,
      "next second | as-it-lies | first solids | certain", "no-rail | next second | in-hand | first solids | proposed");
  row("a fall", "FC 2, R 1", DoubtKind::PocketUnsure, TestimonyKind::Fell,
      "next first | as-it-lies | first solids | out 2 | certain", "next second | as-it-lies | first solids | certain");
  row("no fall", "FC 2, R 1, P 2@SR", DoubtKind::PocketUnsure, TestimonyKind::Fell,
      "next first | as-it-lies | first solids | out 2 | certain", "next second | as-it-lies | first solids | certain");
  row("off the table", "FC 2, R 1", DoubtKind::JumpedBack, TestimonyKind::LeftTable,
      "ball-off-table | next second | in-hand | first solids | out 2 | proposed",
      "next second | as-it-lies | first solids | certain");
  row("a touched ball", "FC 2, R 1", DoubtKind::MovedByHand, TestimonyKind::Foul,
      "touched-ball | next second | in-hand | first solids | certain",
      "next second | as-it-lies | first solids | certain");
}

void QuestionsTest::anAnswerSettlesItsQuestion() {
  QFETCH(QString, events);
  QFETCH(int, doubt);
  QFETCH(int, answer);
  QFETCH(QString, yes);
  QFETCH(QString, no);
  const GameState before = stateOf(kWorld, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", events);
  shot.doubts = {{static_cast<DoubtKind>(doubt), BallName(2), std::nullopt}};
  QCOMPARE(rule(before, shot).sureness, Verdict::Ask);
  Testimony said;
  said.kind = static_cast<TestimonyKind>(answer);
  said.ball = BallName(2);
  said.pocket = PocketName::SideRight;
  QCOMPARE(summaryOf(before, rule(before, witnessed(shot, {said}))), yes);
  said.holds = false;
  QCOMPARE(summaryOf(before, rule(before, witnessed(shot, {said}))), no);
}

/// 6.13.
void QuestionsTest::aShotOutOfTurnIsTheOpponentsGain() {
  const GameState before = stateOf(kWorld, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=12@SR", "FC 12, P 12@SR");
  shot.shooter = Seat::Second;
  const Ruling ruling = rule(before, shot);
  QCOMPARE(ruling.fouls.at(0).kind, FoulKind::OutOfTurn);
  QVERIFY(sectionsOf(ruling).contains("6.13"));
  QCOMPARE(ruling.next.value, Seat::First);
}

void QuestionsTest::oneGroupGoneFromAnOpenTableIsAsked() {
  GameState before = stateOf(kWorld, "open");
  std::erase_if(before.onTable, [](BallName ball) { return ball.isSolid(); });
  QVERIFY(asks(rule(before, shotOf(Game::EightBall, "c=12@SR", "FC 12, P 12@SR")), DoubtKind::NotSpelledOut));
}

FERRULE_TEST(QuestionsTest)
#include "questions_test.moc"
