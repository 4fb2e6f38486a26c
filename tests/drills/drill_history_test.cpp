// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/drill_history.h"

#include <QtTest>

#include "tests/support/test_registry.h"

using namespace ferrule;

class DrillHistoryTest : public QObject {
  Q_OBJECT
 private slots:
  void runsStandInTheOrderOfTime();
  void tooFewTriesGiveNoNumber();
  void theBestIsOfRunsWithEnoughTries();
  void aDifferenceHasNewcombesInterval();
  void aSmallRiseIsNoise();
  void aLargeRiseIsReal();
};

void DrillHistoryTest::runsStandInTheOrderOfTime() {
  const std::vector<RunShare> runs{{300, {7, 10}}, {100, {5, 10}}, {200, {0, 0}}};
  const DrillHistory history = historyOf(runs);
  QCOMPARE(history.runs.size(), std::size_t{2});
  QCOMPARE(history.runs[0].started_ms, std::int64_t{100});
  QVERIFY(history.together.has_value());
  QCOMPARE(history.together->value, 0.6);
  QCOMPARE(history.together->shots, 20);
}

void DrillHistoryTest::tooFewTriesGiveNoNumber() {
  const DrillHistory history = historyOf(std::vector<RunShare>{{1, {3, 4}}, {2, {2, 5}}});
  QVERIFY(!history.together.has_value());
  QCOMPARE(history.together.error().have, 9);
  QCOMPARE(history.together.error().need, kFewestForShare);
  QVERIFY(!history.best.has_value());
  QVERIFY(!history.change.has_value());
  QVERIFY(!historyOf({}).together.has_value());
}

void DrillHistoryTest::theBestIsOfRunsWithEnoughTries() {
  const DrillHistory history = historyOf(std::vector<RunShare>{{1, {8, 10}}, {2, {3, 3}}, {3, {16, 20}}, {4, {5, 10}}});
  QCOMPARE(history.best, std::optional<std::size_t>(2));
}

/// 56/70 against 48/80: 0.0524 to 0.3339. Source: Newcombe 1998, Statistics in Medicine 17, 873, table II, method 10.
void DrillHistoryTest::aDifferenceHasNewcombesInterval() {
  const Interval interval = differenceInterval({56, 70}, {48, 80});
  QVERIFY(std::abs(interval.least - 0.0524) < 5e-5);
  QVERIFY(std::abs(interval.most - 0.3339) < 5e-5);
}

void DrillHistoryTest::aSmallRiseIsNoise() {
  const DrillHistory history = historyOf(std::vector<RunShare>{{1, {12, 20}}, {2, {14, 20}}});
  QVERIFY(history.change.has_value());
  QVERIFY(!history.change->isReal);
  QVERIFY(std::abs(history.change->difference - 0.1) < 1e-12);
  // 60 against 70 %: about 356 on each side. Source: Fleiss 1981.
  QVERIFY(std::abs(*history.change->trialsToTell - 356) <= 1);
}

void DrillHistoryTest::aLargeRiseIsReal() {
  const DrillHistory history = historyOf(std::vector<RunShare>{{1, {5, 30}}, {2, {27, 30}}});
  QVERIFY(history.change->isReal);
}

FERRULE_TEST(DrillHistoryTest)
#include "drill_history_test.moc"
