// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/hand_session.h"

#include <QtTest>
#include <numbers>

#include "core/geometry/units.h"
#include "tests/record/sample.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

class HandSessionTest : public QObject {
  Q_OBJECT
 private slots:
  void aPotTakesTheBallAwayAndKeepsTheTurn();
  void aMissPassesTheTurn();
  void aScratchTakesTheCueBallAway();
  void ballsMovedAfterAShotAreWhereItLeftThem();
  void aCueBallPutDownAfterAScratchWasPlacedByHand();
  void whatFellOnTheBreakCountsForIt();
  void aBallThatFellBesideThePotCounts();
  void everyEditIsUndoneAndRedone();
  void aShotIsReadAsItWasSaid();
  void aFoulIsRuledAsThePersonSawIt();
  void whatWasChosenIsInForceAndUndone();
  void withoutAGameNobodyRules();
  void theTextComesBackWhole();
  void anotherTextIsNone();
  void theCutIsThatOfTheGhostBall();
  void theLikeliestPocketIsTheStraightOne();
};

namespace {

const BallName kOne{1};
const BallName kNine{9};

HandTerms terms(std::optional<Game> game = Game::NineBall) {
  return {"Evening", "9ft", *measuredTableFrom("9ft"), game, {"Ada", "Ben"}, 1, Seat::First};
}

/// A nine-ball frame after a break without fouls; the 1 lies straight in front of the foot-left pocket.
HandSession afterTheBreak() {
  HandSession session(terms());
  session.log({Outcome::Break, {}, {}, {}, {{BallName{5}, PocketName::HeadLeft}}, {}}, 1.0);
  session.setBalls({{kCueBall, {0.6, 0.0}},
                    {kOne, {0.95, 0.32}},
                    {BallName{2}, {-0.5, -0.3}},
                    {BallName{3}, {-0.5, 0.3}},
                    {BallName{4}, {-0.2, 0.3}},
                    {BallName{6}, {-0.2, -0.3}},
                    {BallName{7}, {0.2, 0.5}},
                    {BallName{8}, {0.2, -0.5}},
                    {kNine, {-0.8, 0.1}}});
  return session;
}

}  // namespace

void HandSessionTest::aPotTakesTheBallAwayAndKeepsTheTurn() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Pot, kOne, PocketName::FootLeft, {}, {}, {}}, 9.0);
  QVERIFY(ballIn(session.state().balls, kOne) == nullptr);
  QVERIFY(ballIn(session.state().balls, kCueBall) != nullptr);
  QVERIFY(session.referee()->state().atTable == Seat::First);
  QVERIFY(session.shooterOf(1) == Seat::First);
}

void HandSessionTest::aMissPassesTheTurn() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Miss, kOne, PocketName::FootLeft, MissSide::Under, {}, {}}, 9.0);
  QVERIFY(session.referee()->entries().back().ruling.fouls.empty());
  QVERIFY(session.referee()->state().atTable == Seat::Second);
  session.log({Outcome::Safety, kOne, {}, {}, {}, {}}, 20.0);
  QVERIFY(session.shooterOf(2) == Seat::Second);
  QVERIFY(session.referee()->state().atTable == Seat::First);
}

void HandSessionTest::aScratchTakesTheCueBallAway() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Scratch, kOne, PocketName::FootLeft, {}, {}, {}}, 9.0);
  QVERIFY(ballIn(session.state().balls, kCueBall) == nullptr);
  const GameState after = session.referee()->state();
  QVERIFY(after.atTable == Seat::Second);
  QVERIFY(after.cueBall == CueBallPlace::InHandAnywhere);
}

void HandSessionTest::ballsMovedAfterAShotAreWhereItLeftThem() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Pot, kOne, PocketName::FootLeft, {}, {}, {}}, 9.0);
  session.putBall(kCueBall, {-0.2, 0.4});
  QVERIFY((ballIn(session.readingOf(1).after, kCueBall)->position == TablePoint{-0.2, 0.4}));
  QVERIFY((ballIn(session.readingOf(1).before, kCueBall)->position == TablePoint{0.6, 0.0}));
  session.log({Outcome::Miss, BallName{2}, PocketName::HeadRight, {}, {}, {}}, 15.0);
  session.putBall(kCueBall, {0.0, 0.0});
  QVERIFY((ballIn(session.readingOf(1).after, kCueBall)->position == TablePoint{-0.2, 0.4}));
}

void HandSessionTest::aCueBallPutDownAfterAScratchWasPlacedByHand() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Scratch, kOne, {}, {}, {}, {}}, 9.0);
  session.putBall(kCueBall, {0.1, 0.1});
  QVERIFY(ballIn(session.readingOf(1).after, kCueBall) == nullptr);
  QVERIFY(ballIn(session.state().balls, kCueBall) != nullptr);
}

/// World standardized rules of nine-ball: who breaks and makes a ball goes on.
void HandSessionTest::whatFellOnTheBreakCountsForIt() {
  HandSession session(terms());
  session.log({Outcome::Break, {}, {}, {}, {}, {}}, 1.0);
  QVERIFY(session.referee()->state().atTable == Seat::Second);
  session.ballFell(BallName{3}, PocketName::FootRight);
  QVERIFY(session.referee()->state().atTable == Seat::First);
  QVERIFY(ballIn(session.state().balls, BallName{3}) == nullptr);
  const ShotReading reading = session.readingOf(0);
  QCOMPARE(reading.pocketed, (std::vector<PocketedBall>{{BallName{3}, PocketName::FootRight}}));
  QVERIFY(ballIn(reading.before, BallName{3}) != nullptr && ballIn(reading.after, BallName{3}) == nullptr);
  // With the cue ball it is a scratch.
  session.ballFell(kCueBall, PocketName::HeadLeft);
  QVERIFY(session.readingOf(0).scratch);
  QVERIFY(session.referee()->state().atTable == Seat::Second);
  QVERIFY(session.referee()->state().cueBall == CueBallPlace::InHandAnywhere);
  session.undo();
  session.undo();
  QVERIFY(session.readingOf(0).pocketed.empty());
  QVERIFY(session.referee()->state().atTable == Seat::Second);
}

void HandSessionTest::aBallThatFellBesideThePotCounts() {
  HandSession session = afterTheBreak();
  // Before any shot of its own it is only taken away.
  HandSession fresh(terms());
  fresh.ballFell(kOne, PocketName::HeadLeft);
  QVERIFY(ballIn(fresh.state().balls, kOne) == nullptr && fresh.state().shots.empty());
  session.log({Outcome::Pot, kOne, PocketName::FootLeft, {}, {}, {}}, 9.0);
  session.ballFell(kNine, PocketName::HeadLeft);
  QCOMPARE(session.readingOf(1).pocketed.size(), std::size_t{2});
  // The 9 falling off a legal shot wins the frame.
  QVERIFY(session.referee()->state().result.has_value());
  const auto back = handFromText(handText(session));
  QVERIFY(back.has_value() && back->state() == session.state());
}

void HandSessionTest::everyEditIsUndoneAndRedone() {
  HandSession session(terms());
  const HandState racked = session.state();
  QVERIFY(!session.canUndo());
  session.putBall(kCueBall, {-0.7, 0.2});
  session.takeBall(kNine);
  session.log({Outcome::Break, {}, {}, {}, {}, {}}, 1.0);
  const HandState last = session.state();
  for (int i = 0; i < 3; ++i)
    session.undo();
  QCOMPARE(session.state(), racked);
  QVERIFY(!session.canUndo());
  session.undo();
  QCOMPARE(session.state(), racked);
  for (int i = 0; i < 3; ++i)
    session.redo();
  QCOMPARE(session.state(), last);
  QVERIFY(!session.canRedo());
  // A new edit ends what could have been done again.
  session.undo();
  session.putBall(kCueBall, {-0.7, 0.3});
  QVERIFY(!session.canRedo());
}

void HandSessionTest::aShotIsReadAsItWasSaid() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Pot, kOne, PocketName::FootLeft, {}, {{BallName{2}, PocketName::HeadRight}}, {}}, 9.5);
  const ShotReading reading = session.readingOf(1);
  QCOMPARE(reading.number, 2);
  QCOMPARE(reading.strike_s, 9.5);
  QVERIFY(reading.outcome == Outcome::Pot);
  QVERIFY(reading.outcomeVerdict == Verdict::Certain);
  QVERIFY(reading.firstContact == kOne);
  QCOMPARE(reading.pocketed,
           (std::vector<PocketedBall>{{kOne, PocketName::FootLeft}, {BallName{2}, PocketName::HeadRight}}));
  QVERIFY(reading.target.has_value());
  QVERIFY(reading.target->pocket == PocketName::FootLeft);
  QVERIFY(!reading.scratch);
  QVERIFY(!reading.delivery.speed_mps.has_value());
}

void HandSessionTest::aFoulIsRuledAsThePersonSawIt() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Foul, kOne, {}, {}, {}, FoulKind::DoubleHit}, 9.0);
  const auto ruled = session.rulingOf(1);
  QVERIFY(ruled.has_value());
  QCOMPARE(ruled->ruling.fouls.size(), std::size_t{1});
  QVERIFY(ruled->ruling.fouls.front().kind == FoulKind::DoubleHit);
  QVERIFY(ruled->ruling.sureness == Verdict::Certain);
  // The lowest ball must be met first; world rules of play, 2.7 and 6.2.
  session.log({Outcome::Miss, kNine, {}, {}, {}, {}}, 20.0);
  QVERIFY(session.rulingOf(2)->ruling.fouls.front().kind == FoulKind::WrongBallFirst);
}

/// 3.3: after a break that sank the 8 the breaker may have it spotted, or break again.
void HandSessionTest::whatWasChosenIsInForceAndUndone() {
  HandSession session(terms(Game::EightBall));
  session.log({Outcome::Break, {}, {}, {}, {{BallName{8}, PocketName::HeadLeft}}, {}}, 1.0);
  const auto ruled = session.rulingOf(0);
  QVERIFY(ruled->ruling.options.size() > 1);
  QVERIFY(!ruled->said.chosen);
  const Option again = ruled->ruling.options.back();
  QVERIFY(again.rack);
  const GameState before = session.referee()->state();
  session.choose(again.kind);
  QCOMPARE(session.referee()->state().phase, Phase::Break);
  QCOMPARE(session.rulingOf(0)->said.chosen, std::optional(again.kind));
  QCOMPARE(handFromText(handText(session))->state(), session.state());
  session.undo();
  QCOMPARE(session.referee()->state(), before);
  session.redo();
  QCOMPARE(session.referee()->state().phase, Phase::Break);
}

void HandSessionTest::withoutAGameNobodyRules() {
  HandSession session(terms(std::nullopt));
  session.log({Outcome::Pot, kOne, PocketName::FootLeft, {}, {}, {}}, 1.0);
  QVERIFY(!session.referee().has_value());
  QVERIFY(!session.rulingOf(0).has_value());
  QVERIFY(!session.shooterOf(0).has_value());
}

void HandSessionTest::theTextComesBackWhole() {
  HandSession session = afterTheBreak();
  session.log({Outcome::Miss,
               kOne,
               PocketName::FootLeft,
               MissSide::Over,
               {{kCueBall, PocketName::SideLeft}},
               FoulKind::Scratch},
              9.0, "{}");
  const auto back = handFromText(handText(session));
  QVERIFY(back.has_value());
  QCOMPARE(back->state(), session.state());
  QCOMPARE(back->terms(), session.terms());
}

void HandSessionTest::anotherTextIsNone() {
  for (const char* text : {"", "{}", "[1]", R"({"name": 3})"})
    QVERIFY(!handFromText(text).has_value());
  std::string spoilt = handText(afterTheBreak());
  spoilt.replace(spoilt.find("nine-ball"), 9, "ten-pins!");
  QVERIFY(!handFromText(spoilt).has_value());
}

/// Common practice, no source: the ghost ball touches the object ball on the far side of its line to the pocket.
void HandSessionTest::theCutIsThatOfTheGhostBall() {
  const MeasuredTable table;
  const TablePoint mouth = pockets(table.table)[static_cast<std::size_t>(PocketName::SideLeft)].mouth;
  const TablePoint object{mouth.x, mouth.y - 0.4};
  const TablePoint ghost{object.x, object.y - 2.0 * table.balls.radius_m()};
  // The cue ball comes to the ghost ball at 30 degrees to the line to the pocket.
  const double turn_rad = std::numbers::pi / 6.0;
  const TablePoint cue{ghost.x - 0.3 * std::sin(turn_rad), ghost.y - 0.3 * std::cos(turn_rad)};
  const auto cut_rad = neededCut_rad({{kCueBall, cue}, {kOne, object}}, table, kOne, PocketName::SideLeft);
  QVERIFY(cut_rad.has_value());
  QVERIFY(std::abs(*cut_rad - turn_rad) < 1e-12);
  QVERIFY(!neededCut_rad({{kOne, object}}, table, kOne, PocketName::SideLeft).has_value());
}

void HandSessionTest::theLikeliestPocketIsTheStraightOne() {
  const MeasuredTable table;
  const TablePoint mouth = pockets(table.table)[static_cast<std::size_t>(PocketName::FootRight)].mouth;
  const TablePoint object{mouth.x - 0.3, mouth.y + 0.3};
  const TablePoint cue{object.x - 0.4, object.y + 0.4};
  QVERIFY(likeliestPocket({{kCueBall, cue}, {kOne, object}}, table, kOne) == PocketName::FootRight);
  QVERIFY(!likeliestPocket({{kOne, object}}, table, kOne).has_value());
}

FERRULE_TEST(HandSessionTest)
#include "hand_session_test.moc"
