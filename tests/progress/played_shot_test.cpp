// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/played_shot.h"

#include <QtTest>
#include <cmath>

#include "core/geometry/units.h"
#include "core/progress/difficulty.h"
#include "core/progress/set_ups.h"
#include "core/progress/shot_errors.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

const PlayedTable kTable{"9ft", Table{}, 0.028575};

/// The 3 a metre before the foot-left mouth, the cue ball half a metre behind the ghost point, turned by turn_rad.
ShotReading pot(double turn_rad, double line_rad, Outcome outcome = Outcome::Miss) {
  const Pocket pocket = pockets(kTable.table)[static_cast<std::size_t>(PocketName::FootLeft)];
  const TableVector inward = unit(pocket.inward);
  const TablePoint object = pocket.mouth - 1.0 * inward;
  const TablePoint ghost = object - 2.0 * kTable.ballRadius_m * inward;
  const double approach_rad = direction(inward) - turn_rad;
  ShotReading reading;
  reading.number = 4;
  reading.before = {{kCueBall, ghost - 0.5 * TableVector{std::cos(approach_rad), std::sin(approach_rad)}},
                    {BallName(3), object}};
  reading.firstContact = BallName(3);
  reading.target = Target{BallName(3), PocketName::FootLeft, std::abs(turn_rad), line_rad, {}};
  reading.outcome = outcome;
  return reading;
}

}  // namespace

/// What one reading becomes, and the errors of one shot.
class PlayedShotTest : public QObject {
  Q_OBJECT
 private slots:
  void theCutIsTheTurnThatThePotNeeds();
  void aStraightShotHasNoSide();
  void aBallThatWasNotMetFirstHasNoCut();
  void aPotWithAScratchWasMadeAllTheSame();
  void aimIsTheLineErrorTurnedBack();
  void thinIsThinOnBothSides();
  void errorsWithoutAPlanAreAbsent();
  void errorsAgainstAPlanAreDifferences();
  void theMarginIsThatOfTheMouth();
  void repeatsFindTheSpreadThatWasPlanted();
  void aMovedBallIsAnotherSetUp();
};

void PlayedShotTest::theCutIsTheTurnThatThePotNeeds() {
  const PlayedShot left = playedShot(pot(0.5, 0.02), kTable);
  QVERIFY(isPotAttempt(left));
  QVERIFY(std::abs(*left.cut_rad - 0.5) < 1e-12);
  QCOMPARE(*left.cutSide, CutSide::Left);
  QVERIFY(std::abs(*left.cueToGhost_m - 0.5) < 1e-12);
  QVERIFY(std::abs(*left.objectToPocket_m - 1.0) < 1e-12);
  QVERIFY(!left.made);
  QCOMPARE(left.number, 4);
  QCOMPARE(*playedShot(pot(-0.5, 0.02), kTable).cutSide, CutSide::Right);
  // The cut that came out does not change what was tried.
  ShotReading missed = pot(0.5, 0.02);
  missed.target->cut_rad = 0.9;
  QVERIFY(std::abs(*playedShot(missed, kTable).cut_rad - 0.5) < 1e-12);
}

void PlayedShotTest::aStraightShotHasNoSide() {
  const PlayedShot straight = playedShot(pot(0.05, 0.0), kTable);
  QVERIFY(isPotAttempt(straight));
  QVERIFY(!straight.cutSide);
}

void PlayedShotTest::aBallThatWasNotMetFirstHasNoCut() {
  ShotReading other = pot(0.5, 0.02);
  other.firstContact = BallName(9);
  QVERIFY(!isPotAttempt(playedShot(other, kTable)));
  ShotReading unseen = pot(0.5, 0.02);
  unseen.before.erase(unseen.before.begin());
  QVERIFY(!isPotAttempt(playedShot(unseen, kTable)));
  ShotReading safety = pot(0.5, 0.02, Outcome::Safety);
  QVERIFY(!isPotAttempt(playedShot(safety, kTable)));
  QVERIFY(!isPotAttempt(playedShot(pot(1.8, 0.0), kTable)));
}

void PlayedShotTest::aPotWithAScratchWasMadeAllTheSame() {
  ShotReading scratch = pot(0.3, 0.0, Outcome::Scratch);
  QVERIFY(!playedShot(scratch, kTable).made);
  scratch.pocketed = {{BallName(3), PocketName::FootLeft}, {kCueBall, PocketName::HeadLeft}};
  scratch.scratch = true;
  const PlayedShot played = playedShot(scratch, kTable);
  QVERIFY(played.made);
  QVERIFY(played.foul);
  QCOMPARE(played.potted, 1);
  // What a person said of the outcome stands above what the tracks showed.
  scratch.outcome = Outcome::Miss;
  QVERIFY(!playedShot(scratch, kTable).made);
}

void PlayedShotTest::aimIsTheLineErrorTurnedBack() {
  // Played out by geometry: the cue ball's line turned by a little, the contact found, the object ball's line read.
  for (const double turn_rad : {-0.7, 0.0, 0.3}) {
    constexpr double kTurned_rad = 1e-5;
    const double way_m = 0.5;
    const double diameter_m = 2.0 * kTable.ballRadius_m;
    // From the cue ball, the object ball's centre lies at (way + D cos, D sin) along and across the line.
    const double along = way_m + diameter_m * std::cos(turn_rad);
    const double across = diameter_m * std::sin(turn_rad);
    const double s = -along * std::sin(kTurned_rad) + across * std::cos(kTurned_rad);
    const double newTurn_rad = std::atan2(s, std::sqrt(diameter_m * diameter_m - s * s)) + kTurned_rad;
    const PlayedShot shot = playedShot(pot(turn_rad, newTurn_rad - turn_rad), kTable);
    const auto aim = aimError_rad(shot, kTable);
    QVERIFY(aim.has_value());
    QVERIFY2(std::abs(*aim / kTurned_rad - 1.0) < 1e-3, qPrintable(QString::number(*aim / kTurned_rad)));
  }
}

void PlayedShotTest::thinIsThinOnBothSides() {
  // Sent further than needed: thin. To the left the line goes further left (+), to the right further right (-).
  QVERIFY(*thinError_rad(playedShot(pot(0.5, 0.03), kTable), kTable) > 0.0);
  QVERIFY(*thinError_rad(playedShot(pot(-0.5, -0.03), kTable), kTable) > 0.0);
  QVERIFY(*thinError_rad(playedShot(pot(0.5, -0.03), kTable), kTable) < 0.0);
  QVERIFY(!thinError_rad(playedShot(pot(0.01, 0.03), kTable), kTable));
}

void PlayedShotTest::errorsWithoutAPlanAreAbsent() {
  PlayedShot shot = playedShot(pot(0.5, 0.03), kTable);
  shot.speed_mps = 2.0;
  shot.rest = TablePoint{0.0, 0.0};
  QVERIFY(!speedError(shot));
  QVERIFY(!sideError(shot));
  QVERIFY(!positionError_m(shot));
}

void PlayedShotTest::errorsAgainstAPlanAreDifferences() {
  PlayedShot shot;
  shot.speed_mps = 2.2;
  shot.meant.speed_mps = 2.0;
  shot.side = -0.1;
  shot.meant.side = 0.1;
  shot.rest = TablePoint{0.3, -0.1};
  shot.meant.rest = TablePoint{0.1, 0.0};
  QVERIFY(std::abs(*speedError(shot) - 0.1) < 1e-12);
  QVERIFY(std::abs(*sideError(shot) + 0.2) < 1e-12);
  QVERIFY(std::abs(positionError_m(shot)->x - 0.2) < 1e-12);
  QVERIFY(!heightError(shot));
}

void PlayedShotTest::theMarginIsThatOfTheMouth() {
  const PlayedShot shot = playedShot(pot(0.0, 0.0), kTable);
  const double half_m = kTable.table.corner.mouth_m / 2.0 - kTable.ballRadius_m;
  QVERIFY(std::abs(pocketMargin_rad(shot, kTable) - std::atan(half_m)) < 1e-12);
  QVERIFY(std::abs(reach(shot, kTable) - 0.5 / 0.05715) < 1e-9);
}

void PlayedShotTest::repeatsFindTheSpreadThatWasPlanted() {
  PlayerHistory history;
  history.tables = {kTable};
  history.sessions.resize(1);
  const std::vector<double> speeds{1.8, 2.0, 2.2, 1.9, 2.1};
  for (const double speed : speeds) {
    PlayedShot shot = playedShot(pot(0.5, 0.0), kTable);
    shot.speed_mps = speed;
    history.shots.push_back(shot);
  }
  const auto all = repeated(history, setUpsOf(history), RepeatedValue::Speed);
  QCOMPARE(all.size(), speeds.size());
  const SessionSum sum = total(bySession(all));
  // R: sd(c(1.8, 2.0, 2.2, 1.9, 2.1)) / 2 = 0.07905694, from n - 1 = 4; here the mean square has n.
  QVERIFY(std::abs(std::sqrt(sum.squares / sum.count) - 0.07905694) < 1e-7);
  history.shots.pop_back();
  QVERIFY(repeated(history, setUpsOf(history), RepeatedValue::Speed).empty());
}

void PlayedShotTest::aMovedBallIsAnotherSetUp() {
  PlayerHistory history;
  history.tables = {kTable};
  history.sessions.resize(2);
  history.shots.assign(4, playedShot(pot(0.5, 0.0), kTable));
  history.shots[1].cueBall->x += 0.010;
  history.shots[2].cueBall->x += 0.030;
  history.shots[3].session = 1;
  const auto numbers = setUpsOf(history);
  QCOMPARE(numbers[0], numbers[1]);
  QVERIFY(numbers[2] != numbers[0]);
  QVERIFY(numbers[3] != numbers[0]);
}

FERRULE_TEST(PlayedShotTest)
#include "played_shot_test.moc"
