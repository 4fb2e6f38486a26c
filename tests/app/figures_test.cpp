// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/figures.h"

#include <QtTest>

#include "tests/support/invented_squad.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr std::int64_t kNow_ms = 1'763'000'000'000;  // 2025-11-13

const PlayerHistory& noise() {
  static const PlayerHistory history = invented::historyOf(invented::squad(invented::juniorSquad(), {}), 2);
  return history;
}

/// How many marks, cells, bars or points a chart shows.
std::size_t shownIn(const Chart& chart) {
  struct Counting {
    std::size_t operator()(const SeriesChart& one) const { return one.marks.size(); }
    std::size_t operator()(const GridChart& one) const { return one.cells.size(); }
    std::size_t operator()(const BarChart& one) const { return one.bars.size(); }
    std::size_t operator()(const SplitChart& one) const { return one.rows.size(); }
    std::size_t operator()(const PointChart& one) const { return one.points.size(); }
    std::size_t operator()(const MapChart& one) const { return one.points.size(); }
  };
  return std::visit(Counting(), chart);
}

}  // namespace

/// The figures of the Progress place over records that something is wrong with.
class FiguresTest : public QObject {
  Q_OBJECT
 private slots:
  void oddRecordsGiveSentencesInsteadOfEmptyAxes_data();
  void oddRecordsGiveSentencesInsteadOfEmptyAxes();
  void withoutAnyShotThereIsNoFigure();
  void runsOfDrillsAloneAreShown();
};

void FiguresTest::oddRecordsGiveSentencesInsteadOfEmptyAxes_data() {
  QTest::addColumn<int>("shots");
  QTest::addColumn<int>("odd");
  QTest::newRow("one shot") << 1 << 0;
  QTest::newRow("two shots") << 2 << 0;
  QTest::newRow("nine shots") << 9 << 0;
  QTest::newRow("only corrected shots") << 200 << 1;
  QTest::newRow("dates in the future") << 200 << 2;
  QTest::newRow("a clock that went back") << 200 << 3;
  QTest::newRow("no stroke was measured") << 200 << 4;
  QTest::newRow("all in one place at one time") << 200 << 5;
}

void FiguresTest::oddRecordsGiveSentencesInsteadOfEmptyAxes() {
  QFETCH(int, shots);
  QFETCH(int, odd);
  PlayerHistory history = noise();
  history.runs.clear();
  history.shots.resize(static_cast<std::size_t>(shots));
  history.sessions.resize(history.shots.back().session + 1);
  for (PlayedShot& shot : history.shots) {
    if (odd == 1) shot.corrected = true;
    if (odd == 3 && shot.minutes) shot.minutes = -*shot.minutes;
    if (odd == 4) {
      shot.tracked = false;
      shot.speed_mps.reset();
      shot.side.reset();
      shot.height.reset();
      shot.lineError_rad.reset();
    }
    if (odd == 5) {
      shot.cueBall = shot.objectBall = shot.rest = TablePoint{};
      shot.minutes = 0.0;
    }
  }
  for (PlayedSession& session : history.sessions) {
    if (odd == 2) session.started_ms += 100LL * 365 * 86'400'000;
    if (odd == 5) session.started_ms = 0;
  }
  const PlayerProgress progress = playerProgress(history, {kNow_ms, {1, 199}});
  const auto figures = figuresOf(progress, ReportWords{QLocale::c()});
  QVERIFY(figures.size() >= 18);
  for (const Figure& figure : figures) {
    QVERIFY(!figure.title.isEmpty());
    if (!figure.chart) {
      QVERIFY2(figure.otherwise.size() > 5, qPrintable(figure.title));
      continue;
    }
    QVERIFY2(shownIn(*figure.chart) > 0, qPrintable(figure.title));
  }
  if (odd == 2) QCOMPARE(progress.quality.futureSessions, progress.quality.sessions);
  if (odd == 1) QCOMPARE(progress.quality.corrected, shots);
}

void FiguresTest::withoutAnyShotThereIsNoFigure() {
  PlayerHistory nobody;
  nobody.player = "Nobody";
  QVERIFY(figuresOf(playerProgress(nobody, {kNow_ms, {1, 99}}), ReportWords{QLocale::c()}).empty());
}

void FiguresTest::runsOfDrillsAloneAreShown() {
  PlayerHistory history = noise();
  history.shots.clear();
  history.sessions.clear();
  const auto figures = figuresOf(playerProgress(history, {kNow_ms, {1, 99}}), ReportWords{QLocale::c()});
  QCOMPARE(figures.size(), std::size_t{1});
  QVERIFY(figures.front().kind == FigureKind::Drill);
  QCOMPARE(shownIn(*figures.front().chart), history.runs.size());
}

FERRULE_TEST(FiguresTest)
#include "figures_test.moc"
