// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>

#include "core/rules/special_racking.h"
#include "tests/rules/rules_support.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Straight pool by the world rules of play, section 4, effective 15 March 2016.
class StraightPoolTest : public QObject {
  Q_OBJECT
 private slots:
  void aShotIsRuledBySection4_data();
  void aShotIsRuledBySection4();
  void theThirdFoulInARowCostsFifteenMoreAndAnOpeningBreak();
  void aBreakingFoulDoesNotCountTowardThree();
  void theBreakerMayBeMadeToBreakAgain();
  void fourteenBallsGoneAreRackedAgain();
  void aFrameIsWonByPoints();
  void ballsInTheRacksAreaGiveWayBy4_8_data();
  void ballsInTheRacksAreaGiveWayBy4_8();
  void theRacksAreaFollowsTheTightRack();
};

namespace {

const RuleSet kWorld = worldRules(Game::StraightPool);

Position after(TablePoint cue, BallName ball, TablePoint place) {
  return {{kCueBall, cue}, {ball, place}};
}

}  // namespace

void StraightPoolTest::aShotIsRuledBySection4_data() {
  addCaseColumns();
  const auto& row = addCase;
  row("a fair opening", "break", "safety", "FC 5, R 1, OBR 2", "next second | as-it-lies | certain", "4.4");
  row("one ball to a rail", "break", "safety", "FC 5, R 1, OBR 1",
      "break-requirement | next second | as-it-lies | second may accept/opponent-breaks | points -2 | proposed",
      "4.3, 4.10");
  row("the cue ball to no rail", "break", "safety", "FC 5, OBR 2",
      "break-requirement | next second | as-it-lies | second may accept/opponent-breaks | points -2 | proposed", "4.3");
  row("a called ball on the opening", "break", "c=5@FL", "FC 1, P 5@FL",
      "next first | as-it-lies | points 1 | out 5 | certain", "4.4, 4.7");
  row("both kinds count as a breaking foul", "break", "safety", "FC 5, CB@HL",
      "break-requirement | scratch | next second | in-hand-behind-string | second may accept/opponent-breaks | points "
      "-2 "
      "| proposed",
      "4.10");
  row("a scratch on a fair opening", "break", "safety", "FC 5, R 1, OBR 2, CB@HL",
      "scratch | next second | in-hand-behind-string | points -1 | certain", "4.9, 6.1");
  row("a called ball", "play", "c=3@SL", "FC 3, P 3@SL", "next first | as-it-lies | points 1 | out 3 | certain", "4.7");
  row("and all that fall with it", "play", "c=3@SL", "FC 3, P 3@SL, P 9@FL, P 12@FR",
      "next first | as-it-lies | points 3 | out 3 9 12 | certain", "4.7");
  row("another pocket", "play", "c=3@SL", "FC 3, P 3@SR", "next second | as-it-lies | spot 3 | certain", "4.6");
  row("a ball on a safety", "play", "safety", "FC 3, P 3@SR", "next second | as-it-lies | spot 3 | certain", "4.6");
  row("a ball on a foul", "play", "c=3@SL", "FC 3, P 3@SL, CB@HL",
      "scratch | next second | in-hand-behind-string | points -1 | spot 3 | certain", "4.6, 4.9, 6.1");
  row("no rail", "play", "safety", "FC 3", "no-rail | next second | as-it-lies | points -1 | proposed", "6.3, 4.9");
  row("a ball off the table", "play", "c=3@SL", "FC 3, OFF 7",
      "ball-off-table | next second | as-it-lies | points -1 | spot 7 | proposed", "6.5, 4.6");
  row("a miss", "play", "c=3@SL", "FC 3, R 1", "next second | as-it-lies | certain", "4.4");
}

void StraightPoolTest::aShotIsRuledBySection4() {
  checkCase(kWorld);
}

/// 4.11.
void StraightPoolTest::theThirdFoulInARowCostsFifteenMoreAndAnOpeningBreak() {
  GameState before = stateOf(kWorld, "play");
  before.points = {20, 7};
  before.foulsInARow = {2, 1};
  before.warned = {true, false};
  const Ruling ruling = rule(before, shotOf(Game::StraightPool, "c=3@SL", "FC 3, P 4@FL, CB@HL"));
  QCOMPARE(summaryOf(before, ruling),
           QString("scratch | next first | in-hand-behind-string | points -16 | rack full | certain"));
  QVERIFY(sectionsOf(ruling).contains("4.11"));
  const GameState then = apply(before, ruling);
  QCOMPARE(then.points, (std::array<int, 2>{4, 7}));
  QCOMPARE(then.foulsInARow, (std::array<int, 2>{0, 1}));
  QCOMPARE(then.phase, Phase::Break);
  QCOMPARE(then.onTable.size(), std::size_t{15});
}

/// 4.10 and 4.11.
void StraightPoolTest::aBreakingFoulDoesNotCountTowardThree() {
  GameState before = stateOf(kWorld, "break");
  before.foulsInARow = {2, 0};
  before.warned = {true, false};
  const GameState then = apply(before, rule(before, shotOf(Game::StraightPool, "safety", "FC 5, CB@HL")));
  QCOMPARE(then.points.at(0), -2);
  QCOMPARE(then.foulsInARow.at(0), 2);
}

/// 4.3: as often as the opponent likes.
void StraightPoolTest::theBreakerMayBeMadeToBreakAgain() {
  GameState state = stateOf(kWorld, "break");
  for (int time = 1; time <= 3; ++time) {
    state =
        apply(state, rule(state, shotOf(Game::StraightPool, "safety", "FC 5, OBR 1")), {OptionKind::OpponentBreaks});
    QCOMPARE(state.phase, Phase::Break);
    QCOMPARE(state.atTable, Seat::First);
    QCOMPARE(state.points.at(0), -2 * time);
  }
}

/// 4.4, 4.8.
void StraightPoolTest::fourteenBallsGoneAreRackedAgain() {
  GameState before = stateOf(kWorld, "play");
  before.onTable = {BallName(3), BallName(9)};
  const Ruling rest = rule(before, shotOf(Game::StraightPool, "c=3@SL", "FC 3, P 3@SL"));
  QCOMPARE(rest.racking, Racking::Rest);
  QCOMPARE(apply(before, rest).onTable.size(), std::size_t{15});
  QCOMPARE(apply(before, rest).phase, Phase::Play);
  QCOMPARE(apply(before, rest).atTable, Seat::First);
  const Ruling full = rule(before, shotOf(Game::StraightPool, "c=3@SL", "FC 3, P 3@SL, P 9@FL"));
  QCOMPARE(full.racking, Racking::Full);
  QCOMPARE(apply(before, full).points.at(0), 2);

  ShotEvents inTheWay = shotOf(Game::StraightPool, "c=3@SL", "FC 3, P 3@SL");
  inTheWay.after = after({0.0, 0.2}, BallName(9), {0.7, 0.0});
  const Ruling moved = rule(before, inTheWay);
  QCOMPARE(moved.spotted.at(0).value, (Spotting{BallName(9), SpotPlace::HeadSpot}));
  QVERIFY(sectionsOf(moved).contains("4.8"));
}

void StraightPoolTest::aFrameIsWonByPoints() {
  GameState before = stateOf(kWorld, "play");
  before.rules.pointsToWin = 100;
  before.points = {98, 99};
  QVERIFY(!rule(before, shotOf(Game::StraightPool, "c=3@SL", "FC 3, P 3@SL")).result);
  const Ruling won = rule(before, shotOf(Game::StraightPool, "c=3@SL", "FC 3, P 3@SL, P 4@FL"));
  QCOMPARE(won.result.value().value, (FrameResult{Seat::First, WinReason::PointsReached}));
}

/// Every case of the table of 4.8 but the fifteenth ball that fell, which joins a full rack.
void StraightPoolTest::ballsInTheRacksAreaGiveWayBy4_8_data() {
  QTest::addColumn<double>("ballX");
  QTest::addColumn<double>("ballY");
  QTest::addColumn<double>("cueX");
  QTest::addColumn<double>("cueY");
  QTest::addColumn<int>("fifteenth");  // -1: stays
  QTest::addColumn<int>("cueBall");
  const int stays = -1;
  const auto row = [](const char* name, TablePoint ball, TablePoint cue, int fifteenth, CueBallPlace place) {
    QTest::newRow(name) << ball.x << ball.y << cue.x << cue.y << fifteenth << static_cast<int>(place);
  };
  const TablePoint rack{0.72, 0.01};
  const TablePoint open{0.1, 0.3};
  const TablePoint headSpot{-0.635, 0.0};
  const TablePoint behind{-0.9, 0.2};
  row("nothing in the way", open, behind, stays, CueBallPlace::AsItLies);
  row("the ball in the rack", rack, open, static_cast<int>(SpotPlace::HeadSpot), CueBallPlace::AsItLies);
  row("and the cue ball on the head spot", rack, headSpot, static_cast<int>(SpotPlace::CentreSpot),
      CueBallPlace::AsItLies);
  row("the cue ball in the rack", open, rack, stays, CueBallPlace::InHandBehindString);
  row("and the ball behind the string", behind, rack, stays, CueBallPlace::OnHeadSpot);
  row("and the ball on the head spot", headSpot, rack, stays, CueBallPlace::OnCentreSpot);
  row("both in the rack", rack, {0.8, -0.05}, static_cast<int>(SpotPlace::FootSpot), CueBallPlace::InHandBehindString);
}

void StraightPoolTest::ballsInTheRacksAreaGiveWayBy4_8() {
  QFETCH(double, ballX);
  QFETCH(double, ballY);
  QFETCH(double, cueX);
  QFETCH(double, cueY);
  QFETCH(int, fifteenth);
  QFETCH(int, cueBall);
  const SpecialRacking racking = specialRacking({}, {ballX, ballY}, TablePoint{cueX, cueY});
  QCOMPARE(racking.fifteenth ? static_cast<int>(*racking.fifteenth) : -1, fifteenth);
  QCOMPARE(static_cast<int>(racking.cueBall), cueBall);
}

/// The tight triangle's frame has inner sides of 327.6 mm, from R and the rows' distance R*sqrt(3).
void StraightPoolTest::theRacksAreaFollowsTheTightRack() {
  const SurfaceLines lines;
  const double radius = lines.ballRadius_m;
  const double foot = -lines.headString_m;
  QVERIFY(inRackArea(lines, {foot, 0.0}));
  QVERIFY(inRackArea(lines, {foot + 0.19797, 4.0 * radius}));
  QVERIFY(inRackArea(lines, {foot - 1.9 * radius, 0.0}));
  QVERIFY(!inRackArea(lines, {foot - 2.1 * radius, 0.0}));
  QVERIFY(inRackArea(lines, {foot + 0.19797 + 1.9 * radius, 0.0}));
  QVERIFY(!inRackArea(lines, {foot + 0.19797 + 2.1 * radius, 0.0}));
  QVERIFY(!inRackArea(lines, {foot, 4.0 * radius}));
}

FERRULE_TEST(StraightPoolTest)
#include "straight_pool_test.moc"
