// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/drill_score.h"

#include <QtTest>
#include <numbers>

#include "core/drills/drill_file.h"
#include "tests/drills/drill_shots.h"
#include "tests/support/test_registry.h"

using namespace ferrule;
using namespace ferrule::drillshots;

namespace {

DrillTrial trialOf(std::size_t station, std::vector<std::optional<bool>> met) {
  DrillTrial trial;
  trial.station = station;
  for (const auto& one : met)
    trial.goals.push_back({one});
  return trial;
}

}  // namespace

class DrillScoreTest : public QObject {
  Q_OBJECT
 private slots:
  void sevenOfTenHasWilsonsInterval();
  void goalsCountApartAndTogether();
  void whatIsNotKnownIsNotCounted();
  void stationsAreKeptApart();
  void figuresHaveMeanAndSpread();
  void thickThinAndFlaggedAreCounted();
  void anEllipseLiesAlongItsPlaces();
  void fewPlacesMakeNoEllipse();
  void trialsGoThroughStationsInBlocksOrInTurn();
};

/// 7 of 10: 40 to 89 %. Source: Wilson 1927.
void DrillScoreTest::sevenOfTenHasWilsonsInterval() {
  std::vector<DrillTrial> trials;
  for (int i = 0; i < 10; ++i)
    trials.push_back(trialOf(0, {i < 7}));
  const DrillScore score = scoreOf(cutDrill(), trials);
  QCOMPARE(score.trials, 10);
  QCOMPARE(score.all, (MetShare{7, 10}));
  QVERIFY(score.all.isEnough());
  QVERIFY(std::abs(score.all.interval()->least - 0.397) < 5e-4);
  QVERIFY(std::abs(score.all.interval()->most - 0.892) < 5e-4);
  QVERIFY(!scoreOf(cutDrill(), {}).all.interval().has_value());
}

void DrillScoreTest::goalsCountApartAndTogether() {
  const Drill& zones = *builtInDrill("three-zones");
  const std::vector<DrillTrial> trials{trialOf(0, {true, true}), trialOf(1, {true, false}), trialOf(2, {false, true}),
                                       trialOf(0, {true, true})};
  const DrillScore score = scoreOf(zones, trials);
  QCOMPARE(score.all, (MetShare{2, 4}));
  QCOMPARE(score.goals[0].share, (MetShare{3, 4}));
  QCOMPARE(score.goals[1].share, (MetShare{3, 4}));
}

void DrillScoreTest::whatIsNotKnownIsNotCounted() {
  const Drill& zones = *builtInDrill("three-zones");
  const std::vector<DrillTrial> trials{trialOf(0, {true, std::nullopt}), trialOf(0, {false, std::nullopt}),
                                       trialOf(0, {true, true})};
  const DrillScore score = scoreOf(zones, trials);
  QCOMPARE(score.trials, 3);
  QCOMPARE(score.all, (MetShare{1, 2}));
  QCOMPARE(score.goals[0].share, (MetShare{2, 3}));
  QCOMPARE(score.goals[1].share, (MetShare{1, 1}));
}

void DrillScoreTest::stationsAreKeptApart() {
  const Drill& fan = *builtInDrill("cut-fan");
  const std::vector<DrillTrial> trials{trialOf(0, {true}), trialOf(4, {false}), trialOf(4, {true}), trialOf(9, {true})};
  const DrillScore score = scoreOf(fan, trials);
  QCOMPARE(score.trials, 3);
  QCOMPARE(score.stations[0].all, (MetShare{1, 1}));
  QCOMPARE(score.stations[4].all, (MetShare{1, 2}));
  QCOMPARE(score.stations[2].all, (MetShare{0, 0}));
}

/// 1, 2, 3, 4, 5: mean 3, spread sqrt(2.5); Student's quantile with 4 degrees of freedom 2.776 (handbook table).
void DrillScoreTest::figuresHaveMeanAndSpread() {
  std::vector<DrillTrial> trials;
  for (int i = 1; i <= 5; ++i) {
    trials.push_back(trialOf(0, {true}));
    trials.back().goals[0].figure = i;
  }
  const auto figure = scoreOf(cutDrill(), trials).goals[0].figure;
  QVERIFY(figure.has_value());
  QCOMPARE(figure->count, 5);
  QVERIFY(std::abs(figure->mean - 3.0) < 1e-12);
  QVERIFY(std::abs(*figure->spread - std::sqrt(2.5)) < 1e-12);
  QVERIFY(std::abs(figure->meanInterval->most - (3.0 + 2.776 * std::sqrt(2.5 / 5.0))) < 1e-3);
}

void DrillScoreTest::thickThinAndFlaggedAreCounted() {
  std::vector<DrillTrial> trials(4, trialOf(0, {false}));
  trials[0].missSide = MissSide::Under;
  trials[1].missSide = MissSide::Under;
  trials[2].missSide = MissSide::Over;
  trials[0].setUpError_m = 0.016;
  trials[1].setUpError_m = 0.014;
  const DrillScore score = scoreOf(cutDrill(), trials);
  QCOMPARE(score.thick, 2);
  QCOMPARE(score.thin, 1);
  QCOMPARE(score.flagged, 1);
}

/// Places on a cross of arms 0.2 and 0.1 turned by 30 degrees: variances 2 a² / (n - 1).
void DrillScoreTest::anEllipseLiesAlongItsPlaces() {
  const double turn_rad = std::numbers::pi / 6.0;
  const TableVector along{std::cos(turn_rad), std::sin(turn_rad)};
  const TableVector across = perpendicular(along);
  const TablePoint middle{0.3, -0.1};
  const std::vector<TablePoint> leaves{middle, middle + 0.2 * along, middle - 0.2 * along, middle + 0.1 * across,
                                       middle - 0.1 * across};
  const auto scatter = leaveScatter(leaves);
  QVERIFY(scatter.has_value());
  QVERIFY(distance(scatter->mean, middle) < 1e-12);
  QVERIFY(std::abs(scatter->along_m - 0.2 / std::sqrt(2.0)) < 1e-12);
  QVERIFY(std::abs(scatter->across_m - 0.1 / std::sqrt(2.0)) < 1e-12);
  QVERIFY(std::abs(scatter->direction_rad - turn_rad) < 1e-12);
  QCOMPARE(scatter->count, 5);
}

void DrillScoreTest::fewPlacesMakeNoEllipse() {
  QVERIFY(!leaveScatter(std::vector<TablePoint>(4)).has_value());
  const auto onePlace = leaveScatter(std::vector<TablePoint>(5, {0.1, 0.2}));
  QVERIFY(onePlace.has_value());
  QVERIFY(onePlace->along_m < 1e-9 && onePlace->across_m < 1e-9);
}

void DrillScoreTest::trialsGoThroughStationsInBlocksOrInTurn() {
  const Drill& fan = *builtInDrill("cut-fan");
  QCOMPARE(trialsOf(fan), 50);
  QCOMPARE(stationOf(fan, 9), std::size_t{0});
  QCOMPARE(stationOf(fan, 10), std::size_t{1});
  QCOMPARE(stationOf(fan, 500), std::size_t{4});
  const Drill& zones = *builtInDrill("three-zones");
  QCOMPARE(trialsOf(zones), 15);
  QCOMPARE(stationOf(zones, 4), std::size_t{1});
}

FERRULE_TEST(DrillScoreTest)
#include "drill_score_test.moc"
