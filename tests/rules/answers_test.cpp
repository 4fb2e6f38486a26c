// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/answers.h"

#include <QtTest>
#include <algorithm>

#include "core/rules/ruling_text.h"
#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// What a person may answer with one key, and what the referee makes of it.
class AnswersTest : public QObject {
  Q_OBJECT
 private slots:
  void everyAnswerEndsItsQuestion_data();
  void everyAnswerEndsItsQuestion();
  void theAnswersLeadToDifferentRulings();
  void whoHasWhichGroupIsKnownFromThenOn();
  void whoWasToldOfTwoFoulsLosesOnTheThird();
  void aRailContactIsOneBalls();
  void aDecidedFrameHasNoAnswer();
  void answersAreReadBack();
};

namespace {

const RuleSet kEight = worldRules(Game::EightBall);

bool asks(const Ruling& ruling, DoubtKind kind) {
  return std::ranges::any_of(ruling.questions, [&](const Question& question) { return question.doubt.kind == kind; });
}

/// The ruling once a person gave that answer; the first that has this kind.
Ruling answered(const GameState& before, const ShotEvents& shot, DoubtKind doubt, AnswerKind kind) {
  const Ruling ruling = rule(before, shot);
  const auto question = std::ranges::find(ruling.questions, doubt, [](const Question& q) { return q.doubt.kind; });
  if (question == ruling.questions.end()) qFatal("nothing is asked");
  const auto answers = answersTo(question->doubt, shot.events);
  const auto wanted = std::ranges::find(answers, kind, &DoubtAnswer::kind);
  if (wanted == answers.end()) qFatal("no such answer");
  return rule(before, witnessed(shot, {wanted->says}));
}

}  // namespace

void AnswersTest::everyAnswerEndsItsQuestion_data() {
  QTest::addColumn<QString>("events");
  QTest::addColumn<int>("doubt");
  QTest::addColumn<int>("other");
  const auto row = [](DoubtKind doubt, const char* events, int other = 0) {
    QTest::addRow("%s", toText(doubt).data()) << events << static_cast<int>(doubt) << other;
  };
  row(DoubtKind::SplitHit, "FC 2, R 1", 10);
  row(DoubtKind::NearRail, "FC 2");
  row(DoubtKind::PocketUnsure, "FC 2, R 1");
  row(DoubtKind::BallLost, "FC 2, R 1");
  row(DoubtKind::JumpedBack, "FC 2, R 1");
  row(DoubtKind::MovedByHand, "FC 2, R 1");
  row(DoubtKind::BallsMoving, "FC 2, R 1");
  row(DoubtKind::NameUnsure, "FC 2, R 1", 10);
  row(DoubtKind::Unfinished, "FC 2, R 1");
}

void AnswersTest::everyAnswerEndsItsQuestion() {
  QFETCH(QString, events);
  QFETCH(int, doubt);
  QFETCH(int, other);
  const GameState before = stateOf(kEight, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", events);
  const auto kind = static_cast<DoubtKind>(doubt);
  shot.doubts = {{kind, BallName(2), other != 0 ? std::optional(BallName(other)) : std::nullopt}};
  QVERIFY(asks(rule(before, shot), kind));
  const auto answers = answersTo(shot.doubts.front(), shot.events);
  QVERIFY(!answers.empty());
  for (const DoubtAnswer& answer : answers) {
    const Ruling ruling = rule(before, witnessed(shot, {answer.says}));
    QVERIFY2(ruling.questions.empty(), qPrintable(QString::number(static_cast<int>(answer.kind))));
    QVERIFY(ruling.sureness != Verdict::Ask);
  }
}

void AnswersTest::theAnswersLeadToDifferentRulings() {
  const GameState before = stateOf(kEight, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", "FC 2");
  shot.doubts = {{DoubtKind::NearRail, BallName(2), std::nullopt}};
  QVERIFY(answered(before, shot, DoubtKind::NearRail, AnswerKind::Yes).fouls.empty());
  QCOMPARE(answered(before, shot, DoubtKind::NearRail, AnswerKind::No).fouls.at(0).kind, FoulKind::NoRail);

  // On the break of an event: ten-ball is always called.
  const GameState ten = stateOf(worldRules(Game::TenBall), "low 2");
  ShotEvents fell = shotOf(Game::TenBall, "", "FC 2, P 5@FR, P 2@SL");
  fell.events[1].pocket = PocketName::FootRight;
  const Ruling open = rule(ten, fell);
  QVERIFY(asks(open, DoubtKind::CallUnknown));
  QCOMPARE(answered(ten, fell, DoubtKind::CallUnknown, AnswerKind::Yes).next.value, Seat::First);
  const Ruling no = answered(ten, fell, DoubtKind::CallUnknown, AnswerKind::No);
  QCOMPARE(no.next.value, Seat::Second);
  QCOMPARE(no.options.size(), std::size_t{2});

  const GameState second = stateOf(worldRules(Game::NineBall), "second");
  const ShotEvents pushed = shotOf(Game::NineBall, "", "");
  QVERIFY(answered(second, pushed, DoubtKind::PushOutUnknown, AnswerKind::Yes).pushOut);
  QCOMPARE(answered(second, pushed, DoubtKind::PushOutUnknown, AnswerKind::No).fouls.at(0).kind, FoulKind::NoContact);
}

void AnswersTest::whoHasWhichGroupIsKnownFromThenOn() {
  const GameState before = joinedFrame(kEight, {BallName(2), BallName(8), BallName(12)});
  const ShotEvents shot = shotOf(Game::EightBall, "", "FC 12, R 1");
  const Ruling stripes = answered(before, shot, DoubtKind::GroupsUnknown, AnswerKind::Group);
  // Solids come first: the 12 was a wrong ball then.
  QCOMPARE(stripes.fouls.at(0).kind, FoulKind::WrongBallFirst);
  const GameState after = apply(before, stripes);
  QVERIFY(after.groupsKnown);
  QCOMPARE(groupOf(after, Seat::First), std::optional(Group::Solids));
  QVERIFY(!asks(rule(after, shotOf(Game::EightBall, "", "FC 12, R 1")), DoubtKind::GroupsUnknown));
}

/// 6.14.
void AnswersTest::whoWasToldOfTwoFoulsLosesOnTheThird() {
  GameState before = stateOf(worldRules(Game::NineBall), "low 3");
  before.foulsInARow = {2, 0};
  const ShotEvents foul = shotOf(Game::NineBall, "", "FC 5, R 1");
  const Ruling told = answered(before, foul, DoubtKind::Warned, AnswerKind::Yes);
  QCOMPARE(told.result.value().value.winner, Seat::Second);
  QCOMPARE(told.result->value.why, WinReason::ThreeFouls);
  const Ruling untold = answered(before, foul, DoubtKind::Warned, AnswerKind::No);
  QVERIFY(!untold.result);
  QVERIFY(!asks(untold, DoubtKind::Warned));
}

void AnswersTest::aRailContactIsOneBalls() {
  const GameState before = stateOf(kEight, "S");
  ShotEvents shot = shotOf(Game::EightBall, "c=2@SR", "FC 2");
  shot.doubts = {{DoubtKind::NearRail, BallName(2), std::nullopt}, {DoubtKind::NearRail, BallName(3), std::nullopt}};
  Testimony no;
  no.kind = TestimonyKind::RailContact;
  no.ball = BallName(2);
  no.holds = false;
  // That of the 3 is still open.
  const Ruling open = rule(before, witnessed(shot, {no}));
  QVERIFY(asks(open, DoubtKind::NearRail));
  QCOMPARE(open.questions.front().doubt.ball, std::optional(BallName(3)));
  Testimony neither = no;
  neither.ball = BallName(3);
  QCOMPARE(rule(before, witnessed(shot, {no, neither})).fouls.at(0).kind, FoulKind::NoRail);
}

void AnswersTest::aDecidedFrameHasNoAnswer() {
  QVERIFY(answersTo({DoubtKind::FrameOver, {}, {}}, {}).empty());
}

void AnswersTest::answersAreReadBack() {
  RuledShot ruled;
  const std::vector<ShotEvent> events = shotOf(Game::EightBall, "", "FC 2, 2 same rail, P 5@FR").events;
  for (int kind = 0; kind <= static_cast<int>(DoubtKind::FrameOver); ++kind) {
    const Doubt doubt{static_cast<DoubtKind>(kind), BallName(kind == static_cast<int>(DoubtKind::CallUnknown) ? 5 : 2),
                      BallName(11)};
    for (const DoubtAnswer& answer : answersTo(doubt, events))
      ruled.said.answers.push_back(answer.says);
  }
  QVERIFY(ruled.said.answers.size() > 40);
  ruled.said.chosen = OptionKind::HandBack;
  QCOMPARE(rulingFromText(rulingText(ruled)), std::optional(ruled));
}

FERRULE_TEST(AnswersTest)
#include "answers_test.moc"
