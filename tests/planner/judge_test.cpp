// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/judge.h"

#include <QtTest>

#include "core/table/rack.h"
#include "tests/planner/planner_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::testing;

/// Cases of the world rules of play, by section.
class JudgeTest : public QObject {
  Q_OBJECT
 private slots:
  void eightBall_data();
  void eightBall();
  void nineBall_data();
  void nineBall();
  void theOpenTableIsDecidedByTheCalledPot();
  void theTurnPassesWithTheGroupsExchanged();
  void aScratchGivesTheBallInHand();
  void straightPoolCountsAndSpots();
};

namespace {

using Events = std::vector<ShotEvent>;

ShotEvent met(int ball) {
  return {0.1, EventKind::Ball, kCueBall, BallName(ball), {}, {}, {}};
}
ShotEvent rail(int ball) {
  return {0.2, EventKind::Cushion, BallName(ball), {}, CushionName::Foot, {}, {}};
}
ShotEvent fell(int ball, PocketName pocket = PocketName::FootLeft) {
  return {0.3, EventKind::Pocket, BallName(ball), {}, {}, pocket, {}};
}

/// What a simulation of these events would leave.
Simulation playedOut(const Position& before, const Events& events) {
  Simulation played;
  played.events = events;
  for (const BallAt& ball : before) {
    FinalBall last{ball.ball, BallFate::OnTable, ball.position, {}};
    for (const ShotEvent& event : events) {
      if (event.kind != EventKind::Pocket || event.ball != ball.ball) continue;
      last.fate = BallFate::Pocketed;
      last.pocket = event.pocket;
    }
    played.after.push_back(last);
  }
  return played;
}

PocketedBall called(int ball, PocketName pocket = PocketName::FootLeft) {
  return {BallName(ball), pocket};
}

const Position kBalls{ballAt(0, 0.5, 0.5), ballAt(1, 1.0, 0.3),  ballAt(2, 1.2, 0.6),
                      ballAt(8, 1.5, 0.5), ballAt(9, 1.7, 0.25), ballAt(12, 0.7, 0.8)};
const Position kOnEight{ballAt(0, 0.5, 0.5), ballAt(8, 1.5, 0.5), ballAt(9, 1.7, 0.25)};

}  // namespace

Q_DECLARE_METATYPE(ferrule::ShotEnding)
Q_DECLARE_METATYPE(std::vector<ferrule::ShotEvent>)
Q_DECLARE_METATYPE(std::optional<ferrule::PocketedBall>)

void JudgeTest::eightBall_data() {
  QTest::addColumn<bool>("onEight");
  QTest::addColumn<std::optional<PocketedBall>>("call");
  QTest::addColumn<Events>("events");
  QTest::addColumn<ShotEnding>("ending");
  using Call = std::optional<PocketedBall>;
  const auto row = [](const char* name, bool onEight, const Call& call, const Events& events, ShotEnding ending) {
    QTest::newRow(name) << onEight << call << events << ending;
  };
  row("3.5 called pot", false, called(1), {met(1), fell(1)}, ShotEnding::KeepsTurn);
  row("3.5 wrong pocket", false, called(1), {met(1), fell(1, PocketName::SideLeft)}, ShotEnding::PassesTurn);
  row("3.5 miss to a rail", false, called(1), {met(1), rail(1)}, ShotEnding::PassesTurn);
  row("6.2 opponent's ball first", false, called(1), {met(9), fell(1)}, ShotEnding::Foul);
  row("6.2 the eight first", false, called(1), {met(8), rail(8)}, ShotEnding::Foul);
  row("6.3 no rail", false, called(1), {met(1)}, ShotEnding::Foul);
  row("6.3 rail before contact only", false, called(1), {rail(0), met(1)}, ShotEnding::Foul);
  row("6.3 no contact", false, called(1), {rail(0)}, ShotEnding::Foul);
  row("6.1 scratch", false, called(1), {met(1), fell(1), fell(0)}, ShotEnding::Foul);
  row("3.6 safety pots", false, {}, {met(1), fell(1)}, ShotEnding::PassesTurn);
  row("3.8(b) eight early", false, called(1), {met(1), fell(1), fell(8)}, ShotEnding::Loss);
  row("3.8(b) eight called early", false, called(8), {met(1), fell(8)}, ShotEnding::Loss);
  row("3.5 eight called", true, called(8), {met(8), fell(8)}, ShotEnding::Win);
  row("3.8(c) eight in another pocket", true, called(8), {met(8), fell(8, PocketName::HeadLeft)}, ShotEnding::Loss);
  row("3.8(a) eight and scratch", true, called(8), {met(8), fell(8), fell(0)}, ShotEnding::Loss);
  row("3.9 scratch on the eight", true, called(8), {met(8), fell(0)}, ShotEnding::Foul);
  row("6.2 stripe first on the eight", true, called(8), {met(9), fell(8)}, ShotEnding::Loss);
}

void JudgeTest::eightBall() {
  QFETCH(bool, onEight);
  QFETCH(std::optional<PocketedBall>, call);
  QFETCH(Events, events);
  QFETCH(ShotEnding, ending);
  const Position& balls = onEight ? kOnEight : kBalls;
  QCOMPARE(judge(situationOf(Game::EightBall, balls, "solids"), call, playedOut(balls, events)).ending, ending);
}

void JudgeTest::nineBall_data() {
  QTest::addColumn<Events>("events");
  QTest::addColumn<ShotEnding>("ending");
  QTest::newRow("2.5 any ball after the lowest") << Events{met(1), fell(2)} << ShotEnding::KeepsTurn;
  QTest::newRow("2.5 the nine by combination") << Events{met(1), fell(9)} << ShotEnding::Win;
  QTest::newRow("2.6 the nine off another ball") << Events{met(2), fell(9)} << ShotEnding::Foul;
  QTest::newRow("2.6 the nine and a scratch") << Events{met(1), fell(9), fell(0)} << ShotEnding::Foul;
}

void JudgeTest::nineBall() {
  QFETCH(Events, events);
  QFETCH(ShotEnding, ending);
  const Position balls{ballAt(0, 0.5, 0.5), ballAt(1, 1.0, 0.3), ballAt(2, 1.2, 0.6), ballAt(9, 1.7, 0.25)};
  const Judgement judged = judge(situationOf(Game::NineBall, balls), called(1), playedOut(balls, events));
  QCOMPARE(judged.ending, ending);
  // A nine that fell on a foul is spotted. Source: world rules of play, 2.6.
  if (ending == ShotEnding::Foul) QVERIFY(ballIn(judged.next.balls, BallName(9)) != nullptr);
}

void JudgeTest::theOpenTableIsDecidedByTheCalledPot() {
  const Situation before = situationOf(Game::EightBall, kBalls);
  const Judgement judged = judge(before, called(12), playedOut(kBalls, {met(12), fell(12)}));
  QCOMPARE(judged.ending, ShotEnding::KeepsTurn);
  QVERIFY(!judged.next.open);
  QCOMPARE(judged.next.own, kStripes);
  // A combination off a solid is legal on an open table. Source: world rules of play, 3.4.
  QCOMPARE(judge(before, called(12), playedOut(kBalls, {met(1), fell(12)})).next.own, kStripes);
}

void JudgeTest::theTurnPassesWithTheGroupsExchanged() {
  const Situation before = situationOf(Game::EightBall, kBalls, "solids");
  const Judgement judged = judge(before, called(1), playedOut(kBalls, {met(1), rail(1)}));
  QCOMPARE(judged.next.own, kStripes);
  QCOMPARE(judged.next.cueBall, CueBallFreedom::AsItLies);
}

void JudgeTest::aScratchGivesTheBallInHand() {
  const Situation before = situationOf(Game::EightBall, kBalls, "solids");
  const Judgement judged = judge(before, called(1), playedOut(kBalls, {met(1), fell(0)}));
  QVERIFY(judged.scratch);
  QCOMPARE(judged.next.cueBall, CueBallFreedom::Anywhere);
  QVERIFY(ballIn(judged.next.balls, kCueBall) == nullptr);
}

/// Source: world rules of play, 4.4 and 4.6.
void JudgeTest::straightPoolCountsAndSpots() {
  const Situation before = situationOf(Game::StraightPool, kBalls);
  const Judgement two = judge(before, called(1), playedOut(kBalls, {met(1), fell(1), fell(9, PocketName::HeadLeft)}));
  QCOMPARE(two.points, 2);
  const Judgement wrong = judge(before, called(1), playedOut(kBalls, {met(1), fell(9)}));
  QCOMPARE(wrong.points, 0);
  QCOMPARE(wrong.ending, ShotEnding::PassesTurn);
  QVERIFY(distance(ballIn(wrong.next.balls, BallName(9))->position, footSpot(Table{})) < 0.1);
  QCOMPARE(judge(before, called(1), playedOut(kBalls, {met(1), fell(0)})).points, -1);
}

FERRULE_TEST(JudgeTest)
#include "judge_test.moc"
