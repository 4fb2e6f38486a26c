// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/progress/goals.h"

#include <QtTest>
#include <algorithm>

#include "core/progress/history_filter.h"
#include "tests/support/invented_squad.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

/// Targets of the time before.
class GoalsTest : public QObject {
  Q_OBJECT
 private slots:
  void initTestCase();
  void targetsAreThoseOfAReportAtThePeriodsStart();
  void triesAtTheDrillDecide_data();
  void triesAtTheDrillDecide();
  void withoutATimeBeforeThereAreNone();

 private:
  PlayerHistory before_;
  PlayerHistory now_;
};

void GoalsTest::initTestCase() {
  // Jorin cuts balls to the left too thick, which sets a target at the cut fan.
  const invented::Squad squad = invented::squad(invented::juniorSquad(), {});
  const PlayerHistory whole = invented::historyOf(squad, 3);
  HistoryFilter filter;
  filter.until_ms = whole.sessions[whole.sessions.size() * 7 / 10].started_ms;
  before_ = filtered(whole, filter);
  filter.from_ms = filter.until_ms;
  filter.until_ms.reset();
  now_ = filtered(whole, filter);
}

void GoalsTest::targetsAreThoseOfAReportAtThePeriodsStart() {
  const ProgressOptions options{0, {1, 199}};
  PlayerHistory now = now_;
  now.runs.clear();
  const auto checks = checkGoals(before_, playerProgress(now, options), options);
  const auto work = playerProgress(before_, options).work;
  QVERIFY(!work.empty());
  QCOMPARE(checks.size(), work.size());
  for (std::size_t i = 0; i < work.size(); ++i) {
    QVERIFY(checks[i].item == work[i]);
    // Nobody ran a drill.
    QVERIFY(checks[i].state == GoalState::NotTried);
  }
}

void GoalsTest::triesAtTheDrillDecide_data() {
  QTest::addColumn<int>("more");
  QTest::addColumn<bool>("met");
  QTest::newRow("as many as the target asks") << 0 << true;
  QTest::newRow("one fewer") << -1 << false;
}

void GoalsTest::triesAtTheDrillDecide() {
  QFETCH(int, more);
  QFETCH(bool, met);
  const ProgressOptions options{0, {1, 199}};
  const WorkItem item = playerProgress(before_, options).work.front();
  QVERIFY(isOfPots(item.kind));
  PlayerHistory now = now_;
  // Two runs of as many tries as the target names.
  const std::string key(keyOf(item.drill));
  now.runs = {{key, "", 1, 0, item.target, item.trials}, {key, "", 2, 0, item.target + more, item.trials}};
  const auto checks = checkGoals(before_, playerProgress(now, options), options);
  QCOMPARE(checks.front().met, 2 * item.target + more);
  QCOMPARE(checks.front().known, 2 * item.trials);
  QCOMPARE(checks.front().state == GoalState::Met, met);
  QVERIFY(checks.front().interval->holds(static_cast<double>(checks.front().met) / checks.front().known));
}

void GoalsTest::withoutATimeBeforeThereAreNone() {
  PlayerHistory nothing = before_;
  nothing.shots.clear();
  QVERIFY(checkGoals(nothing, playerProgress(now_, {0, {1, 99}}), {0, {1, 99}}).empty());
}

FERRULE_TEST(GoalsTest)
#include "goals_test.moc"
