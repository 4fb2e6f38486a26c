// SPDX-License-Identifier: GPL-3.0-or-later
#include <QtTest>
#include <algorithm>
#include <boost/math/distributions/beta.hpp>
#include <cmath>

#include "core/progress/data_quality.h"
#include "core/progress/entry_angle.h"
#include "core/progress/game_measures.h"
#include "core/progress/make_rate.h"
#include "core/table/pocket.h"
#include "tests/support/invented_squad.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

PlayerHistory emptyHistory(std::size_t sessions = 1) {
  PlayerHistory history;
  history.player = "Invented";
  history.tables = {{"9ft", Table{}, 0.028575}};
  for (std::size_t i = 0; i < sessions; ++i)
    history.sessions.push_back(
        {static_cast<std::int64_t>(i) + 1, "s", static_cast<std::int64_t>(i) * 86'400'000, 0, {}});
  return history;
}

PlayedShot attempt(bool made, double cut_rad = 0.4, double cueWay_m = 0.5, double objectWay_m = 0.8) {
  PlayedShot shot;
  shot.frame = 1;
  shot.pocket = PocketName::FootLeft;
  shot.made = made;
  shot.outcome = made ? Outcome::Pot : Outcome::Miss;
  shot.potted = made ? 1 : 0;
  shot.cut_rad = cut_rad;
  shot.cutSide = CutSide::Left;
  shot.cueToGhost_m = cueWay_m;
  shot.objectToPocket_m = objectWay_m;
  return shot;
}

void add(PlayerHistory& history, const PlayedShot& shot, int times = 1) {
  for (int i = 0; i < times; ++i) {
    history.shots.push_back(shot);
    history.shots.back().number = static_cast<int>(history.shots.size());
  }
}

}  // namespace

/// What many shots add up to.
class MeasuresTest : public QObject {
  Q_OBJECT
 private slots:
  void bandsTakeTheirUpperEndToTheNext();
  void theGridCountsEveryAttemptOnceInItsCell();
  void cellsAreDrawnToThePlayersOwnMean();
  void cellsThatDifferAreDrawnLess();
  void calledAndInferredAreKeptApart();
  void theWayIntoThePocketIsThatOfTheTable();
  void makesAreCountedByTheWayIn();
  void missesAreCountedBySide();
  void difficultyExplainsWhyHarderShotsAreMissed();
  void inningsEndWithTheFirstShotThatPotsNothing();
  void aFrameWonInOneVisitIsARunOut();
  void inningsOfAFrameAreThoseOfAGame();
  void safetiesAreJudgedByTheReply();
  void breaksAreCountedByThemselves();
  void whatNobodyRecordedIsSaidToBeMissing();
  void choiceAndDeliveryFallInFourBoxes();
  void preparationLeavesPausesAndBackwardClocksOut();
  void pocketsOfAnotherWidthAreLeftOutAndNamed();
  void theDataAreDescribed();
};

/// By hand: a corner pocket points along the diagonal of its corner, a side pocket across the table.
void MeasuresTest::theWayIntoThePocketIsThatOfTheTable() {
  const PlayedTable table{"9ft", Table{}, 0.028575};
  const auto pocketOf = [&](PocketName name) { return pockets(table.table)[static_cast<std::size_t>(name)]; };
  PlayedShot shot = attempt(true);
  QVERIFY(!entryAngle_rad(shot, table).has_value());
  const Pocket corner = pocketOf(PocketName::FootLeft);
  shot.objectBall = corner.mouth - corner.inward * 0.4;
  QVERIFY(*entryAngle_rad(shot, table) < 1e-6);
  // Along the long cushion it is half a right angle off.
  shot.objectBall = corner.mouth - TableVector{0.5, 0.0};
  QVERIFY(std::abs(*entryAngle_rad(shot, table) - 0.7853981634) < 0.02);
  shot.pocket = PocketName::SideLeft;
  const Pocket side = pocketOf(PocketName::SideLeft);
  shot.objectBall = side.mouth + TableVector{0.3, -0.3 * (side.inward.y > 0.0 ? 1.0 : -1.0)};
  QVERIFY(std::abs(*entryAngle_rad(shot, table) - 0.7853981634) < 1e-6);
  QCOMPARE(entryBand(0.0), std::size_t{0});
  QCOMPARE(entryBand(0.18), std::size_t{1});
  QCOMPARE(entryBand(1.5707963268), std::size_t{3});
}

void MeasuresTest::makesAreCountedByTheWayIn() {
  PlayerHistory history = emptyHistory();
  PlayedShot shot = attempt(true);
  const Pocket corner = pockets(history.tables[0].table)[static_cast<std::size_t>(PocketName::FootLeft)];
  shot.objectBall = corner.mouth - corner.inward * 0.4;
  add(history, shot, 12);
  shot.made = false;
  add(history, shot, 3);
  shot.objectBall = corner.mouth - TableVector{0.5, 0.0};
  add(history, shot, 5);
  shot.intent = Intent::Called;
  add(history, shot, 7);
  shot.objectBall.reset();
  add(history, shot, 2);
  const MakesByEntry makes = makesByEntry(history, Intent::Inferred);
  QCOMPARE(makes[0][0].made, 12);
  QCOMPARE(makes[0][0].tried, 15);
  QCOMPARE(makes[0][3].tried, 5);
  QCOMPARE(makes[0][3].made, 0);
  QCOMPARE(makes[1][0].tried, 0);
  QCOMPARE(makesByEntry(history, Intent::Called)[0][3].tried, 7);
  // Flat shots are drawn toward the player's mean, and stay below straight ones.
  QVERIFY(makes[0][3].shrunken > 0.0 && makes[0][3].shrunken < makes[0][0].shrunken);
}

void MeasuresTest::bandsTakeTheirUpperEndToTheNext() {
  QCOMPARE(cutBand(0.0), std::size_t{0});
  QCOMPARE(cutBand(0.0873), std::size_t{1});
  QCOMPARE(cutBand(1.5), std::size_t{5});
  QCOMPARE(cutBand(1.6), std::size_t{5});
  QCOMPARE(distanceBand(0.6, 1.27), std::size_t{0});
  QCOMPARE(distanceBand(0.635, 1.27), std::size_t{1});
  QCOMPARE(distanceBand(9.0, 1.27), std::size_t{3});
}

void MeasuresTest::theGridCountsEveryAttemptOnceInItsCell() {
  PlayerHistory history = emptyHistory();
  add(history, attempt(true), 7);
  add(history, attempt(false), 3);
  add(history, attempt(true, 0.02, 1.5), 4);
  PlayedShot safety = attempt(false);
  safety.outcome = Outcome::Safety;
  add(history, safety, 5);
  const MakeGrid grid = makeGrid(history, Intent::Inferred, GridDistance::CueBall);
  QCOMPARE(grid.tried, 14);
  const MakeCell& near = grid.cells[0][2];
  QCOMPARE(near.made, 7);
  QCOMPARE(near.tried, 10);
  // Wilson, 7 of 10: 40 to 89 %.
  QVERIFY(std::abs(near.wilson->least - 0.397) < 0.001);
  QVERIFY(std::abs(near.wilson->most - 0.892) < 0.001);
  QCOMPARE(grid.cells[2][0].tried, 4);
  QVERIFY(!grid.cells[2][0].isEnough());
  QVERIFY(!grid.cells[3][5].wilson);
  QCOMPARE(makeGrid(history, Intent::Inferred, GridDistance::ObjectBall).cells[1][2].tried, 10);
}

void MeasuresTest::cellsAreDrawnToThePlayersOwnMean() {
  // By hand: mu 0.6, S 0.8, 0.8/0.24 - 3 = 1/3, room 40 - 10 - 3 = 27, rho 1/81, strength 80.
  std::vector<MakeCell> cells(4);
  for (MakeCell& cell : cells) {
    cell.made = 6;
    cell.tried = 10;
  }
  cells[0].made = 8;
  cells[1].made = 4;
  std::vector<MakeCell*> all;
  for (MakeCell& cell : cells)
    all.push_back(&cell);
  QVERIFY(std::abs(priorStrength(all) - 80.0) < 1e-9);
  finishCells(all);
  const double mean = 24.5 / 41.0;
  QVERIFY(std::abs(cells[0].shrunken - (8.0 + 80.0 * mean) / 90.0) < 1e-12);
  const boost::math::beta_distribution<> beta(8.0 + 80.0 * mean, 2.0 + 80.0 * (1.0 - mean));
  QVERIFY(std::abs(cells[0].shrunkenInterval.least - boost::math::quantile(beta, 0.025)) < 1e-12);
  // Cells that agree altogether are drawn as hard as it goes.
  cells[0].made = 6;
  cells[1].made = 6;
  QCOMPARE(priorStrength(all), 200.0);
}

void MeasuresTest::cellsThatDifferAreDrawnLess() {
  std::vector<MakeCell> cells(2);
  cells[0].made = 90;
  cells[0].tried = 100;
  cells[1].made = 30;
  cells[1].tried = 100;
  // By hand: mu 0.6, S 18, S/(mu(1-mu)) 75, room 200 - 100 - 1 = 99, rho 74/99, strength 0.34, held at 2.
  QCOMPARE(priorStrength({&cells[0], &cells[1]}), 2.0);
  cells[0].made = 70;
  cells[1].made = 50;
  // mu 0.6, S 2, 2/0.24 = 8.333, rho 7.333/99, strength 12.5.
  QVERIFY(std::abs(priorStrength({&cells[0], &cells[1]}) - 12.5) < 1e-9);
  finishCells({&cells[0], &cells[1]});
  QVERIFY(cells[0].shrunken < 0.70);
  QVERIFY(cells[0].shrunken > 0.68);
}

void MeasuresTest::calledAndInferredAreKeptApart() {
  PlayerHistory history = emptyHistory();
  add(history, attempt(true), 12);
  PlayedShot called = attempt(false);
  called.intent = Intent::Called;
  add(history, called, 11);
  QCOMPARE(makeShare(history, Intent::Inferred)->value, 1.0);
  QCOMPARE(makeShare(history, Intent::Called)->value, 0.0);
  QCOMPARE(makesByPocket(history, Intent::Called)[static_cast<std::size_t>(PocketName::FootLeft)].tried, 11);
}

void MeasuresTest::missesAreCountedBySide() {
  PlayerHistory history = emptyHistory();
  PlayedShot thick = attempt(false);
  thick.missSide = MissSide::Under;
  thick.speed_mps = 1.0;
  add(history, thick, 8);
  PlayedShot thin = thick;
  thin.missSide = MissSide::Over;
  thin.cutSide = CutSide::Right;
  thin.speed_mps = 5.0;
  add(history, thin, 3);
  PlayedShot straight = thick;
  straight.cutSide.reset();
  add(history, straight, 4);
  const MissSides sides = missSides(history);
  QCOMPARE(sides.leftCuts.thick, 8);
  QCOMPARE(sides.leftCuts.thin, 0);
  QCOMPARE(sides.rightCuts.thin, 3);
  QCOMPARE(sides.speeds[1].total(), 8);
  QCOMPARE(sides.speeds[4].total(), 3);
  QCOMPARE(*sides.rightCuts.thickShare, wilsonInterval(0, 3));
  QVERIFY(!sides.pockets[0].thickShare);
}

void MeasuresTest::difficultyExplainsWhyHarderShotsAreMissed() {
  invented::Plan plan;
  plan.seed = 5;
  const PlayerHistory history = invented::history(invented::Habits{}, plan);
  const auto difficulty = Difficulty::of(history);
  QVERIFY(difficulty.has_value());
  const PlayedTable& table = history.tables.front();
  const double easy = difficulty->chance(attempt(true, 0.1, 0.3, 0.4), table);
  const double hard = difficulty->chance(attempt(true, 0.9, 1.2, 1.5), table);
  QVERIFY2(easy > 0.85 && hard < 0.35, qPrintable(QString("%1 %2").arg(easy).arg(hard)));
  // Calibrated over its own shots: expected and observed agree in the easier and in the harder half.
  double expected[2] = {0.0, 0.0};
  double made[2] = {0.0, 0.0};
  double tried[2] = {0.0, 0.0};
  for (const PlayedShot& shot : history.shots) {
    if (!isPotAttempt(shot)) continue;
    const double chance = difficulty->chance(shot, table);
    const int half = chance > 0.6 ? 1 : 0;
    expected[half] += chance;
    made[half] += shot.made ? 1.0 : 0.0;
    tried[half] += 1.0;
  }
  for (int half = 0; half < 2; ++half)
    QVERIFY2(std::abs(expected[half] - made[half]) / tried[half] < 0.04, qPrintable(QString::number(half)));
}

void MeasuresTest::inningsEndWithTheFirstShotThatPotsNothing() {
  PlayerHistory history = emptyHistory();
  for (int inning = 0; inning < 12; ++inning) {
    add(history, attempt(true), 2);
    add(history, attempt(false));
  }
  const InningMeasure whole = inningMeasure(history, {});
  QCOMPARE(whole.innings, 12);
  QCOMPARE(whole.balls->value, 2.0);
  // Another player's shot in between ends an inning too: numbers are no longer in a row.
  for (PlayedShot& shot : history.shots) {
    if (shot.number > 1) ++shot.number;
  }
  QCOMPARE(inningMeasure(history, {}).innings, 13);
  // A ball that falls with a foul counts for nobody.
  for (PlayedShot& shot : history.shots)
    shot.foul = true;
  QCOMPARE(inningMeasure(history, {}).balls->value, 0.0);
}

void MeasuresTest::aFrameWonInOneVisitIsARunOut() {
  PlayerHistory history = emptyHistory();
  for (int frame = 1; frame <= 10; ++frame) {
    PlayedShot shot = attempt(true);
    shot.frame = frame;
    if (frame > 4) {
      add(history, attempt(false));
      history.shots.back().frame = frame;
    }
    add(history, shot, frame <= 4 ? 7 : 3);
    history.shots.back().wonFrame = true;
  }
  const auto runOuts = inningMeasure(history, {}).runOuts;
  QVERIFY(runOuts.has_value());
  QCOMPARE(runOuts->value, 0.4);
}

void MeasuresTest::inningsOfAFrameAreThoseOfAGame() {
  PlayerHistory history = emptyHistory();
  // Ten frames of a game with two innings each (two makes and a miss, then a miss), and a practice that counts for
  // nothing.
  for (int frame = 1; frame <= 10; ++frame) {
    for (const auto& [number, made] : {std::pair{1, true}, {2, true}, {3, false}, {7, false}}) {
      PlayedShot shot = attempt(made);
      shot.frame = frame;
      shot.number = number;
      shot.game = "eight-ball";
      history.shots.push_back(shot);
    }
  }
  PlayedShot alone = attempt(false);
  alone.frame = 99;
  add(history, alone, 5);
  const InningMeasure innings = inningMeasure(history, {1, 99});
  QCOMPARE(innings.inFrame->value, 2.0);
  QCOMPARE(innings.inFrame->shots, 10);
  history.shots.erase(history.shots.begin(), history.shots.end() - 5);
  QVERIFY(inningMeasure(history, {1, 99}).inFrame.error().kind == ShortageKind::NoValues);
}

void MeasuresTest::safetiesAreJudgedByTheReply() {
  PlayerHistory history = emptyHistory();
  PlayedShot safety = attempt(false);
  safety.outcome = Outcome::Safety;
  const auto answered = [&](Outcome outcome, bool foul, std::optional<bool> safe, int times) {
    safety.reply = Reply{outcome, foul};
    safety.safeLeave = safe;
    add(history, safety, times);
  };
  answered(Outcome::Pot, false, false, 4);
  answered(Outcome::Pot, true, false, 1);  // potted with a foul
  answered(Outcome::Miss, false, true, 5);
  answered(Outcome::Safety, false, true, 3);
  answered(Outcome::Scratch, false, std::nullopt, 2);
  safety.reply.reset();  // the frame ended with it
  safety.safeLeave.reset();
  add(history, safety, 2);
  const SafetyMeasure measure = safetyMeasure(history);
  QCOMPARE(measure.tried, 17);
  QCOMPARE(measure.answered, 15);
  QCOMPARE(measure.potted, 4);
  QCOMPARE(measure.missed, 5);
  QCOMPARE(measure.safeties, 3);
  QCOMPARE(measure.fouled, 3);
  // 8 of the 13 of which it is known; Wilson, 95 %: 35.52 to 82.29 %, by his formula in Python 3.11
  // with statistics.NormalDist().inv_cdf(0.975).
  QCOMPARE(measure.success->shots, 13);
  QVERIFY(std::abs(measure.success->interval.least - 0.3552) < 5e-4);
  QVERIFY(std::abs(measure.success->interval.most - 0.8229) < 5e-4);
}

void MeasuresTest::breaksAreCountedByThemselves() {
  PlayerHistory history = emptyHistory();
  PlayedShot dry;
  dry.outcome = Outcome::Break;
  dry.rest = TablePoint{0.3, 0.4};
  add(history, dry, 6);
  PlayedShot wet = dry;
  wet.potted = 2;
  add(history, wet, 6);
  wet.foul = true;
  wet.rest.reset();
  add(history, wet, 3);
  const BreakMeasure breaks = breakMeasure(history, {});
  QCOMPARE(breaks.breaks, 15);
  QCOMPARE(breaks.success->value, 0.4);
  QCOMPARE(breaks.balls->value, 1.2);
  QCOMPARE(breaks.cueBallFromMiddle_m->value, 0.5);
  QCOMPARE(breaks.cueBallFromMiddle_m->shots, 12);
}

void MeasuresTest::whatNobodyRecordedIsSaidToBeMissing() {
  PlayerHistory history = emptyHistory();
  add(history, attempt(true), 40);
  QCOMPARE(choiceMeasure(history, {}).choiceLoss.error().kind, ShortageKind::NoValues);
  QCOMPARE(safetyMeasure(history).success.error().kind, ShortageKind::NoValues);
  QCOMPARE(inningMeasure(history, {}).runOuts.error().kind, ShortageKind::NoValues);
  QCOMPARE(timeMeasure(history, {}).all.error().kind, ShortageKind::NoTimes);
  QCOMPARE(unforcedShare(history, std::nullopt).error(), (Shortage{ShortageKind::Shots, 40, kFewestForDifficulty}));
}

void MeasuresTest::choiceAndDeliveryFallInFourBoxes() {
  PlayerHistory history = emptyHistory();
  PlayedShot shot = attempt(true);
  shot.choiceLoss = 0.01;
  shot.deliveryLoss = 0.20;
  add(history, shot, 6);
  shot.choiceLoss = 0.10;
  add(history, shot, 4);
  const ChoiceMeasure choices = choiceMeasure(history, {});
  QCOMPARE(choices.boxes[0][1], 6);
  QCOMPARE(choices.boxes[1][1], 4);
  QVERIFY(std::abs(choices.choiceLoss->value - 0.046) < 1e-12);
}

void MeasuresTest::preparationLeavesPausesAndBackwardClocksOut() {
  PlayerHistory history = emptyHistory();
  PlayedShot shot = attempt(true);
  shot.preparation_s = 20.0;
  add(history, shot, 10);
  shot.preparation_s = 900.0;
  add(history, shot, 5);
  shot.preparation_s = -30.0;
  add(history, shot, 5);
  const auto time = timeMeasure(history, {}).all;
  QCOMPARE(time->value, 20.0);
  QCOMPARE(time->shots, 10);
}

void MeasuresTest::pocketsOfAnotherWidthAreLeftOutAndNamed() {
  PlayerHistory history = emptyHistory(3);
  Table tight;
  tight.corner.mouth_m = 0.105;
  history.tables.push_back({"tight", tight, 0.028575});
  history.tables.push_back({"twin", Table{}, 0.028575});
  history.sessions[1].table = 1;
  history.sessions[2].table = 2;
  add(history, attempt(true), 10);
  PlayedShot other = attempt(false);
  other.session = 1;
  add(history, other, 8);
  other.session = 2;
  add(history, other, 5);
  const auto widths = byPocketWidth(history);
  QCOMPARE(widths.size(), std::size_t{2});
  QCOMPARE(widths[0].shots.size(), std::size_t{15});
  QCOMPARE(widths[0].sessions.size(), std::size_t{2});
  QCOMPARE(QString::fromStdString(widths[0].tableOf(widths[0].shots.back()).name), QString("twin"));
  const DataQuality quality = dataQuality(widths, 0);
  QCOMPARE(quality.leftOut.size(), std::size_t{1});
  QCOMPARE(QString::fromStdString(quality.leftOut[0].name), QString("tight"));
  QCOMPARE(quality.leftOut[0].shots, 8);
}

void MeasuresTest::theDataAreDescribed() {
  PlayerHistory history = emptyHistory(2);
  history.sessions[1].started_ms = 1'000'000'000'000;
  PlayedShot shot = attempt(true);
  shot.minutes = 10.0;
  add(history, shot);
  shot.minutes = 4.0;
  shot.corrected = true;
  shot.tracked = false;
  shot.verdict = Verdict::Ask;
  add(history, shot);
  shot.minutes.reset();
  shot.intent = Intent::Called;
  shot.session = 1;
  add(history, shot);
  const DataQuality quality = dataQuality({history}, 500'000'000'000);
  QCOMPARE(quality.shots, 3);
  QCOMPARE(quality.corrected, 2);
  QCOMPARE(quality.untracked, 2);
  QCOMPARE(quality.asked, 2);
  QCOMPARE(quality.called, 1);
  QCOMPARE(quality.backwardTimes, 1);
  QCOMPARE(quality.undatedShots, 1);
  QCOMPARE(quality.futureSessions, 1);
  QVERIFY(std::abs(quality.hours - 10.0 / 60.0) < 1e-12);
}

FERRULE_TEST(MeasuresTest)
#include "measures_test.moc"
