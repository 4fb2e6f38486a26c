// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/trial_counter.h"

#include <QtTest>

#include "core/drills/drill_file.h"
#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

namespace {

Position cutSetUp() {
  return setUpOf(cutDrill().stations[0], nineFoot());
}

ShotReading madeCut() {
  ShotReading made = shot(cutSetUp(), at(1.2, 0.4));
  pot(made, 1, PocketName::FootLeft);
  return made;
}

}  // namespace

class TrialCounterTest : public QObject {
  Q_OBJECT
 private slots:
  void shotsFromTheSetUpAreTriesAndOthersAreNot();
  void aCarelessSetUpIsFlaggedAndCounted();
  void stationsAreKnownByTheirPlaces();
  void aRunEndsWithTheFirstMiss();
  void aRunThatClearsEndsAtOnce();
  void aNewSetUpBreaksARunOff();
  void aRunStillOpenIsClosedAtTheEnd();
  void aPersonsWordAndTheLeaveDecideTogether();
};

void TrialCounterTest::shotsFromTheSetUpAreTriesAndOthersAreNot() {
  ShotReading missed = shot(cutSetUp(), at(0.9, 0.6));
  missed.target = Target{BallName(1), PocketName::FootLeft, {}, {}, MissSide::Under};
  const ShotReading warmUp = shot({ball(0, 0.5, 0.5), ball(1, 1.5, 0.5)}, at(0.6, 0.6));
  const auto trials = countTrials(cutDrill(), nineFoot(), std::vector{madeCut(), warmUp, missed, madeCut()});
  QCOMPARE(trials.size(), std::size_t{3});
  QVERIFY(trials[0].succeeded() == true);
  QVERIFY(trials[1].succeeded() == false);
  QVERIFY(trials[1].missSide == MissSide::Under);
  QVERIFY(trials[2].succeeded() == true);
  QCOMPARE(trials[1].shots, std::vector<std::size_t>{2});
  QVERIFY(distance(*trials[1].leave, at(0.9, 0.6)) < 1e-12);
}

void TrialCounterTest::aCarelessSetUpIsFlaggedAndCounted() {
  ShotReading careless = madeCut();
  careless.before[1].position = careless.before[1].position + TableVector{0.0, 0.020};
  const auto trials = countTrials(cutDrill(), nineFoot(), std::vector{madeCut(), careless});
  QCOMPARE(trials.size(), std::size_t{2});
  QVERIFY(!trials[0].isFlagged());
  QVERIFY(trials[1].isFlagged());
  QVERIFY(std::abs(*trials[1].setUpError_m - 0.020) < 1e-12);
}

void TrialCounterTest::stationsAreKnownByTheirPlaces() {
  const Drill& fan = *builtInDrill("cut-fan");
  std::vector<ShotReading> shots;
  for (const std::size_t station : {4, 0, 2})
    shots.push_back(shot(setUpOf(fan.stations[station], nineFoot()), at(0.9, 0.6)));
  const auto trials = countTrials(fan, nineFoot(), shots);
  QCOMPARE(trials.size(), std::size_t{3});
  QCOMPARE(trials[0].station, std::size_t{4});
  QCOMPARE(trials[1].station, std::size_t{0});
  QCOMPARE(trials[2].station, std::size_t{2});
}

void TrialCounterTest::aRunEndsWithTheFirstMiss() {
  const Drill& pattern = *builtInDrill("three-ball-pattern");
  ShotReading first = shot({ball(0, 0.3, 0.3), ball(1, 1.0, 0.5), ball(2, 1.5, 0.4), ball(3, 1.2, 0.7)}, at(0.8, 0.4));
  pot(first, 1, PocketName::SideLeft);
  const ShotReading miss = shot(first.after, at(0.7, 0.7));
  const ShotReading after = shot(miss.after, at(0.6, 0.6));
  const auto trials = countTrials(pattern, nineFoot(), std::vector{first, miss, after});
  QCOMPARE(trials.size(), std::size_t{1});
  QCOMPARE(trials[0].shots, (std::vector<std::size_t>{0, 1}));
  QVERIFY(trials[0].goals[0].met == false);
  QCOMPARE(trials[0].goals[0].figure, std::optional(1.0));
}

void TrialCounterTest::aRunThatClearsEndsAtOnce() {
  Drill two = *builtInDrill("three-ball-pattern");
  two.stations[0].loose->count = 2;
  ShotReading first = shot({ball(0, 0.3, 0.3), ball(1, 1.0, 0.5), ball(2, 1.5, 0.4)}, at(0.8, 0.4));
  pot(first, 1, PocketName::SideLeft);
  ShotReading second = shot(first.after, at(0.8, 0.6));
  pot(second, 2, PocketName::FootLeft);
  TrialCounter counter(two, nineFoot());
  QVERIFY(counter.add(first).empty());
  const auto ended = counter.add(second);
  QCOMPARE(ended.size(), std::size_t{1});
  QVERIFY(ended[0].goals[0].met == true);
  // Whether it went as it was called, nobody said.
  QVERIFY(!ended[0].succeeded().has_value());
  QVERIFY(!counter.finish().has_value());
}

void TrialCounterTest::aNewSetUpBreaksARunOff() {
  const Drill& pattern = *builtInDrill("three-ball-pattern");
  const Position set{ball(0, 0.3, 0.3), ball(1, 1.0, 0.5), ball(2, 1.5, 0.4), ball(3, 1.2, 0.7)};
  ShotReading first = shot(set, at(0.8, 0.4));
  pot(first, 1, PocketName::SideLeft);
  const Position other{ball(0, 0.3, 0.3), ball(1, 0.7, 0.5), ball(2, 1.3, 0.4), ball(3, 1.6, 0.7)};
  const ShotReading anew = shot(other, at(0.7, 0.7));
  TrialCounter counter(pattern, nineFoot());
  QVERIFY(counter.add(first).empty());
  const auto ended = counter.add(anew);
  QCOMPARE(ended.size(), std::size_t{2});
  QCOMPARE(ended[0].shots, std::vector<std::size_t>{0});
  QCOMPARE(ended[1].shots, std::vector<std::size_t>{1});
}

void TrialCounterTest::aRunStillOpenIsClosedAtTheEnd() {
  const Drill& pattern = *builtInDrill("three-ball-pattern");
  ShotReading first = shot({ball(0, 0.3, 0.3), ball(1, 1.0, 0.5), ball(2, 1.5, 0.4), ball(3, 1.2, 0.7)}, at(0.8, 0.4));
  pot(first, 1, PocketName::SideLeft);
  QCOMPARE(countTrials(pattern, nineFoot(), std::vector{first}).size(), std::size_t{1});
}

void TrialCounterTest::aPersonsWordAndTheLeaveDecideTogether() {
  const DrillStation& zones = builtInDrill("three-zones")->stations.front();
  // The pot is said, the zone of 0.15 widths about (1.40, 0.25) is decided by the leave.
  DrillTrial trial = trialAsSaid(zones, 0, nineFoot(), {true, {}, at(1.45, 0.3), {false}});
  QVERIFY(trial.succeeded() == true);
  trial = trialAsSaid(zones, 0, nineFoot(), {true, {}, at(1.7, 0.65), {true}});
  QVERIFY(trial.goals[0].met == true && trial.goals[1].met == false);
  QVERIFY(std::abs(*trial.goals[1].figure - 0.35 * Table{}.width_m) < 1e-9);
  trial = trialAsSaid(zones, 0, nineFoot(), {false, MissSide::Over});
  QVERIFY(trial.goals[0].met == false && !trial.goals[1].met.has_value());
  QVERIFY(trial.succeeded() == false);
  trial = trialAsSaid(zones, 0, nineFoot(), {true, {}, {}, {true}, true});
  QVERIFY(trial.goals[0].met == false && trial.goals[1].met == false);
}

FERRULE_TEST(TrialCounterTest)
#include "trial_counter_test.moc"
