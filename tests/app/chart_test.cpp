// SPDX-License-Identifier: GPL-3.0-or-later
#include <QImage>
#include <QPainter>
#include <QtTest>

#include "app/report/chart_csv.h"
#include "app/report/chart_painter.h"
#include "app/report/drill_charts.h"
#include "app/report/play_charts.h"
#include "app/report/report_charts.h"
#include "app/report/report_sheet.h"
#include "app/report/shot_charts.h"
#include "core/progress/player_progress.h"
#include "tests/support/invented_squad.h"
#include "tests/support/test_registry.h"

using namespace ferrule;

namespace {

constexpr int kMargin = 40;

/// How many pixels of ink lie inside an area and outside it.
struct Ink {
  int inside = 0;
  int outside = 0;
};

Ink inkOf(const Chart& chart, double width_pt, double unit) {
  const ChartStyle style = paperStyle(unit);
  const double width = width_pt * unit;
  const double height = chartHeight(chart, width, style);
  QImage image(static_cast<int>(width) + 2 * kMargin, static_cast<int>(height) + 2 * kMargin, QImage::Format_RGB32);
  image.fill(Qt::white);
  {
    QPainter painter(&image);
    drawChart(painter, QRectF(kMargin, kMargin, width, height), chart, style);
  }
  Ink ink;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      if (image.pixel(x, y) == qRgb(255, 255, 255)) continue;
      // One pixel for the width of a line.
      const bool inside = x >= kMargin - 1 && x <= kMargin + width + 1 && y >= kMargin - 1 && y <= kMargin + height + 1;
      ++(inside ? ink.inside : ink.outside);
    }
  }
  return ink;
}

const PlayerProgress& progress() {
  static const PlayerProgress report = playerProgress(
      invented::historyOf(invented::squad(invented::juniorSquad(), {}), 0), {2'000'000'000'000, {1, 199}});
  return report;
}

}  // namespace

/// Charts as values and as pictures.
class ChartTest : public QObject {
  Q_OBJECT
 private slots:
  void chartsStayWithinTheirArea_data();
  void chartsStayWithinTheirArea();
  void chartsOfPlayStayWithinTheirArea();
  void chartsOfShotsStayWithinTheirArea();
  void whatIsPointedAtIsWhereItIsDrawn();
  void aNameOfAnyLettersIsShownWhole();
  void fewRepliesAreCountedNotShared();
  void speedsAreInTheChosenUnit_data();
  void speedsAreInTheChosenUnit();
  void stepsAreRound();
  void cellsWithFewShotsShowNoShare();
  void thereIsNoChartOfNothing();
  void aFindingThatStandsIsASolidLine();
};

void ChartTest::chartsStayWithinTheirArea_data() {
  QTest::addColumn<int>("number");
  QTest::addColumn<double>("width_pt");
  for (const double width_pt : {235.0, 490.0}) {
    for (int i = 0; i < 5; ++i)
      QTest::addRow("chart %d, %.0f points wide", i, width_pt) << i << width_pt;
  }
}

void ChartTest::chartsStayWithinTheirArea() {
  QFETCH(int, number);
  QFETCH(double, width_pt);
  if (number == 1 && width_pt < 300.0) return;  // the grid takes the whole width
  const ReportWords words{QLocale(QLocale::English)};
  const PlayerProgress& report = progress();
  const std::optional<Chart> charts[] = {
      spreadChart(report.history, report.aim.all, findingOf(report.findings, FindingKind::AimTrend),
                  SpreadUnit::Degrees, "Scatter of the aim", words),
      makeGridChart(report.inferred.byCueBall, "Made", 1.27, words), pocketChart(report.inferred, words),
      missChart(report.misses, words), conditionChart(report, words)};
  const std::optional<Chart>& chart = charts[number];
  QVERIFY(chart.has_value());
  for (const double unit : {1.0, 2.5}) {
    const Ink ink = inkOf(*chart, width_pt, unit);
    QVERIFY(ink.inside > 500);
    QCOMPARE(ink.outside, 0);
  }
}

void ChartTest::chartsOfPlayStayWithinTheirArea() {
  const ReportWords words{QLocale(QLocale::English)};
  const PlayerProgress& report = progress();
  const auto drill = chosenDrill(report.history, {});
  QVERIFY(drill.has_value());
  const std::vector<std::optional<Chart>> charts{
      gameChart(report, words),
      safetyChart(report.safeties, words),
      positionChart(report.position, words),
      boxesChart(report.choices, words),
      reliabilityChart(report.reliability, words),
      historyChart(drill->history, "Drill", words.numbers()),
  };
  for (const auto& chart : charts) {
    QVERIFY(chart.has_value());
    // The narrowest card of the window is 300 px of 1.2 px a point.
    for (const double width_pt : {250.0, 490.0}) {
      const Ink ink = inkOf(*chart, width_pt, 2.0);
      QVERIFY(ink.inside > 500);
      QVERIFY2(ink.outside == 0, qPrintable(titleOf(*chart) + QString(" %1").arg(width_pt)));
    }
  }
}

void ChartTest::chartsOfShotsStayWithinTheirArea() {
  const ReportWords words{QLocale(QLocale::English)};
  const PlayerHistory& history = progress().history;
  const std::vector<Asked> asked = askedOf(history);
  for (const auto& chart :
       {targetChart(history, asked, words), tipChart(history, words), speedAskedChart(history, asked, words),
        restChart(history, asked, words), missMapChart(history, words)}) {
    QVERIFY(chart.has_value());
    for (const double width_pt : {250.0, 490.0}) {
      const Ink ink = inkOf(*chart, width_pt, 2.0);
      QVERIFY(ink.inside > 500);
      QVERIFY2(ink.outside == 0, qPrintable(titleOf(*chart) + QString(" %1").arg(width_pt)));
    }
  }
}

void ChartTest::whatIsPointedAtIsWhereItIsDrawn() {
  SeriesChart sessions;
  sessions.title = "Sessions";
  sessions.values = {{0.0, "0"}, {1.0, "1"}};
  for (int i = 0; i < 4; ++i)
    sessions.marks.push_back({i * 2.0, 0.5, Interval{0.3, 0.7}, "60", false, "told", static_cast<std::size_t>(i)});
  PointChart shots;
  shots.title = "Shots";
  shots.points = {{0.25, 0.25, PointKind::Filled, "told", 0}, {0.75, 0.5, PointKind::Filled, "told", 1}};
  for (const double grain : {0.0, 4.0}) {
    for (const Chart& chart : {Chart(sessions), Chart(shots)}) {
      ChartStyle style = paperStyle(2.0);
      style.grain = grain;
      const double width = 600.0;
      const double height = chartHeight(chart, width, style);
      QImage image(static_cast<int>(width) + 2 * kMargin, static_cast<int>(height) + 2 * kMargin, QImage::Format_RGB32);
      image.fill(Qt::white);
      QPainter painter(&image);
      const auto spots = drawChart(painter, QRectF(kMargin, kMargin, width, height), chart, style);
      painter.end();
      QVERIFY(!spots.empty());
      for (const ChartSpot& spot : spots) {
        // The filled dot is the accent's ink at the middle of what is pointed at.
        const QColor seen = image.pixelColor(spot.area.center().toPoint());
        QVERIFY2(std::abs(seen.red() - style.inks.accent.red()) < 40 &&
                     std::abs(seen.green() - style.inks.accent.green()) < 40,
                 qPrintable(titleOf(chart) + QString(" %1").arg(seen.name())));
      }
    }
  }
}

void ChartTest::aNameOfAnyLettersIsShownWhole() {
  // Qt Charts reads labels as HTML, keeps one of each wording and cuts what lacks room.
  const auto inkOfLabel = [](const QString& label) {
    SeriesChart chart;
    chart.title = "Title";
    chart.values = {{0.0, label}, {1.0, label}};
    chart.marks.push_back({0.0, 0.5, {}, {}, false, {}, 0});
    return inkOf(chart, 300.0, 2.0).inside;
  };
  const int bare = inkOfLabel("m");
  QVERIFY(inkOfLabel("<b>m</b>") > bare + 100);
  QVERIFY(inkOfLabel("< m & m >") > bare + 100);
  QVERIFY(inkOfLabel("mmmmmmmmmmmmmmmmmm") > bare + 1000);
  SeriesChart one;
  one.title = "Title";
  one.values = {{0.0, "mm"}, {1.0, " "}};
  one.marks.push_back({0.0, 0.5, {}, {}, false, {}, 0});
  QVERIFY2(inkOfLabel("mm") > inkOf(one, 300.0, 2.0).inside + 50, "the same word at two places stands twice");
}

void ChartTest::fewRepliesAreCountedNotShared() {
  const ReportWords words{QLocale(QLocale::English)};
  SafetyMeasure safeties;
  safeties.tried = safeties.answered = 9;
  safeties.potted = 9;
  const auto few = safetyChart(safeties, words);
  const ChartBar& bar = std::get<BarChart>(*few).bars[1];
  QVERIFY(!bar.value && !bar.interval);
  QCOMPARE(bar.words, QString("9 of 9"));
  safeties.tried = safeties.answered = 10;
  const auto enough = safetyChart(safeties, words);
  QCOMPARE(std::get<BarChart>(*enough).bars[1].value, std::optional(0.9));
}

void ChartTest::speedsAreInTheChosenUnit_data() {
  QTest::addColumn<int>("unit");
  QTest::addColumn<double>("factor");
  QTest::addColumn<QString>("name");
  QTest::addColumn<QString>("header");
  QTest::newRow("m/s") << 0 << 1.0 << "m/s"
                       << "asked_m_s,delivered_m_s,hollow,words";
  QTest::newRow("km/h") << 1 << 3.6 << "km/h"
                        << "asked_km_h,delivered_km_h,hollow,words";
  // The international mile of 1959 is 1609.344 m.
  QTest::newRow("mph") << 2 << 3600.0 / 1609.344 << "mph"
                       << "asked_mph,delivered_mph,hollow,words";
}

void ChartTest::speedsAreInTheChosenUnit() {
  QFETCH(int, unit);
  QFETCH(double, factor);
  QFETCH(QString, name);
  QFETCH(QString, header);
  const PlayerHistory& history = progress().history;
  const std::vector<Asked> asked = askedOf(history);
  const ReportWords words(QLocale(QLocale::English), static_cast<SpeedUnit>(unit));
  const auto chart = speedAskedChart(history, asked, words);
  const auto& plane = std::get<PointChart>(*chart);
  QVERIFY(plane.acrossWords.endsWith(name) && plane.upWords.endsWith(name));
  for (const ChartPoint& point : plane.points) {
    QVERIFY(std::abs(point.x - factor * *asked[point.key].speed_mps) < 1e-9);
    QVERIFY(std::abs(point.y - factor * *history.shots[point.key].speed_mps) < 1e-9);
    // Who points at it is told the same.
    QVERIFY2(point.words.contains(words.numbers().speed(*history.shots[point.key].speed_mps)), qPrintable(point.words));
  }
  QVERIFY(QString::fromStdString(chartCsv(*chart)).startsWith(header + "\r\n"));
  const auto sides = missChart(progress().misses, words);
  const auto& rows = std::get<SplitChart>(*sides).rows;
  QVERIFY(rows.size() > 2);
  for (std::size_t i = 2; i < rows.size(); ++i)
    QVERIFY2(rows[i].label.endsWith(name), qPrintable(rows[i].label));
}

void ChartTest::stepsAreRound() {
  QCOMPARE(roundStep(1.0, 4), 0.5);
  QCOMPARE(roundStep(0.8, 4), 0.2);
  QCOMPARE(roundStep(37.0, 4), 10.0);
  QCOMPARE(roundStep(0.0, 4), 1.0);
}

void ChartTest::cellsWithFewShotsShowNoShare() {
  MakeGrid grid;
  grid.cells[0][0].made = 9;
  grid.cells[0][0].tried = 9;
  grid.cells[0][1].made = 5;
  grid.cells[0][1].tried = 10;
  grid.tried = 19;
  finishCells({&grid.cells[0][0], &grid.cells[0][1]});
  const auto chart = makeGridChart(grid, "Made", 1.27, ReportWords{QLocale(QLocale::English)});
  QVERIFY(chart.has_value());
  const auto& cells = std::get<GridChart>(*chart).cells;
  QCOMPARE(cells[0][0].words, QString("only 9"));
  QVERIFY(!cells[0][0].shade);
  QVERIFY(cells[0][1].words.startsWith("50"));
  QVERIFY2(cells[0][1].small.startsWith("24") && cells[0][1].small.endsWith("10"), qPrintable(cells[0][1].small));
}

void ChartTest::thereIsNoChartOfNothing() {
  const ReportWords words{QLocale(QLocale::English)};
  const PlayerProgress empty = playerProgress({}, {});
  QVERIFY(!makeGridChart(empty.inferred.byCueBall, "Made", 1.27, words));
  QVERIFY(!pocketChart(empty.inferred, words));
  QVERIFY(!missChart(empty.misses, words));
  QVERIFY(!conditionChart(empty, words));
  QVERIFY(!spreadChart(empty.history, empty.aim.all, findingOf(empty.findings, FindingKind::AimTrend),
                       SpreadUnit::Degrees, "Aim", words));
}

void ChartTest::aFindingThatStandsIsASolidLine() {
  const ReportWords words{QLocale(QLocale::English)};
  const PlayerProgress& report = progress();
  const auto speed =
      spreadChart(report.history, report.strikes.speed, findingOf(report.findings, FindingKind::SpeedTrend),
                  SpreadUnit::Percent, "Speed", words);
  QVERIFY(speed.has_value());
  QVERIFY(std::get<SeriesChart>(*speed).trend->stands);
  const auto aim = spreadChart(report.history, report.aim.all, findingOf(report.findings, FindingKind::AimTrend),
                               SpreadUnit::Degrees, "Aim", words);
  QVERIFY(!std::get<SeriesChart>(*aim).trend->stands);
}

FERRULE_TEST(ChartTest)
#include "chart_test.moc"
