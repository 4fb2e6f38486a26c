// SPDX-License-Identifier: GPL-3.0-or-later
// What statistics and a report cost over many shots, and how often chance alone raises an alarm. With --squad it only
// writes the invented junior squad's record, to look at its reports.
#include <CLI/CLI.hpp>
#include <QApplication>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <algorithm>
#include <array>
#include <clocale>
#include <cstdio>
#include <functional>

#include "app/report/chart_painter.h"
#include "app/report/drill_charts.h"
#include "app/report/play_charts.h"
#include "app/report/report_builder.h"
#include "app/report/report_charts.h"
#include "app/report/report_csv.h"
#include "app/report/report_html.h"
#include "app/report/report_pdf.h"
#include "app/report/report_sheet.h"
#include "app/report/shot_charts.h"
#include "core/measure/player_history.h"
#include "core/progress/asked.h"
#include "core/progress/history_filter.h"
#include "tests/support/own_home.h"
#include "tests/support/processor_time.h"
#include "tests/support/squad_record.h"

namespace ferrule {

namespace {

/// Of processor time, which other programs on the machine do not lengthen; the median of three.
double milliseconds(const std::function<void()>& work) {
  std::array<double, 3> times{};
  for (double& time : times) {
    const double start_s = bench::processorTime_s();
    work();
    time = 1000.0 * (bench::processorTime_s() - start_s);
  }
  std::ranges::sort(times);
  return times[1];
}

void printTime(const char* what, const std::function<void()>& work) {
  std::printf("  %-48s %9.1f ms\n", what, milliseconds(work));
  std::fflush(stdout);
}

/// One of two players with many shots: each week a practice of sixty alone and a judged match of forty each.
PlayerHistory largeHistory(int shots) {
  invented::Plan plan;
  plan.weeks = std::max(1, shots / (plan.practiceShots + plan.matchShots));
  return invented::historyOf(
      invented::squad({invented::Habits{.name = "Invented"}, invented::Habits{.name = "Other"}}, plan), 0);
}

/// What a chart of the Progress place costs: worked out from the measures, and drawn as wide as a card of the window.
void printChart(const char* what, const std::function<std::optional<Chart>()>& made) {
  const std::optional<Chart> chart = made();
  if (!chart) {
    std::printf("  %-48s not enough to draw\n", what);
    return;
  }
  const ChartStyle style = paperStyle(1.2);
  constexpr double kWidth_px = 480.0;
  const double height_px = chartHeight(*chart, kWidth_px, style);
  QImage picture(QSizeF(kWidth_px, height_px).toSize(), QImage::Format_ARGB32_Premultiplied);
  printTime(what, [&] {
    const auto again = made();
    QPainter painter(&picture);
    (void)drawChart(painter, picture.rect().toRectF(), *again, style);
  });
}

void printCharts(const PlayerProgress& progress) {
  const PlayerHistory& history = progress.history;
  const ReportWords words{QLocale::c()};
  const Makes& makes = progress.mainMakes();
  const double width_m = history.tables.front().table.width_m;
  std::printf("charts of %zu shots: worked out and drawn (goal 150 ms each)\n", history.shots.size());
  const std::vector<Asked> asked = askedOf(history);
  const auto trend = [&](FindingKind kind) -> const Finding& { return findingOf(progress.findings, kind); };
  printTime("what was asked of each shot", [&] { (void)askedOf(history); });
  printChart("scatter of the aim", [&] {
    return spreadChart(history, progress.aim.all, trend(FindingKind::AimTrend), SpreadUnit::Degrees, "aim", words);
  });
  printChart("scatter of the speed", [&] {
    return spreadChart(history, progress.strikes.speed, trend(FindingKind::SpeedTrend), SpreadUnit::Percent, "speed",
                       words);
  });
  printChart("made by cut and distance", [&] { return makeGridChart(makes.byCueBall, "made", width_m, words); });
  printChart("deliveries on the target", [&] { return targetChart(history, asked, words); });
  printChart("miss map", [&] { return missMapChart(history, words); });
  printChart("which side it misses", [&] { return missChart(progress.misses, words); });
  printChart("made by pocket", [&] { return pocketChart(makes, words); });
  printChart("speed asked and delivered", [&] { return speedAskedChart(history, asked, words); });
  printChart("where the cue ball came to rest", [&] { return restChart(history, asked, words); });
  printChart("where the tip met the ball", [&] { return tipChart(history, words); });
  printChart("like shots under other conditions", [&] { return conditionChart(progress, words); });
  printChart("choice and delivery", [&] { return boxesChart(progress.choices, words); });
  printChart("position for the next ball", [&] { return positionChart(progress.position, words); });
  printChart("chances as stated and as they came out", [&] { return reliabilityChart(progress.reliability, words); });
  printChart("the game", [&] { return gameChart(progress, words); });
  printChart("safeties and what came next", [&] { return safetyChart(progress.safeties, words); });
  printChart("a drill's runs", [&]() -> std::optional<Chart> {
    const auto chosen = chosenDrill(history, {});
    return chosen ? historyChart(chosen->history, "drill", words.numbers()) : std::nullopt;
  });
  HistoryFilter filter;
  filter.group = ShotGroup::Missed;
  filter.mostProduct = 4.0;
  printTime("list: short pots that were missed", [&] { (void)filtered(history, filter); });
  filter = {};
  filter.group = ShotGroup::WrongSide;
  printTime("list: on the wrong side of the next ball", [&] { (void)filtered(history, filter); });
}

void printMeasures(const PlayerHistory& history, const std::string& folder) {
  const Resampling resampling;
  std::printf("%zu shots in %zu sessions, processor time, median of three\n", history.shots.size(),
              history.sessions.size());
  const auto difficulty = Difficulty::of(history);
  const auto strikes = strikeMeasures(history, resampling);
  const auto aim = aimMeasure(history, resampling);
  const auto found = findings(history, difficulty, strikes, aim, resampling);
  printTime("difficulty", [&] { (void)Difficulty::of(history); });
  printTime("aim", [&] { (void)aimMeasure(history, resampling); });
  printTime("speed, tip point, position", [&] { (void)strikeMeasures(history, resampling); });
  printTime("make grid", [&] { (void)makeGrid(history, Intent::Inferred, GridDistance::CueBall); });
  printTime("makes by pocket", [&] { (void)makesByPocket(history, Intent::Inferred); });
  printTime("make share", [&] { (void)makeShare(history, Intent::Inferred); });
  printTime("miss sides", [&] { (void)missSides(history); });
  printTime("breaks", [&] { (void)breakMeasure(history, resampling); });
  printTime("innings", [&] { (void)inningMeasure(history, resampling); });
  printTime("fouls", [&] { (void)foulShare(history); });
  printTime("unforced", [&] { (void)unforcedShare(history, difficulty); });
  printTime("time for a shot", [&] { (void)timeMeasure(history, resampling); });
  printTime("choice and delivery", [&] { (void)choiceMeasure(history, resampling); });
  printTime("findings", [&] { (void)findings(history, difficulty, strikes, aim, resampling); });
  printTime("what to work on", [&] { (void)workItems(history, found, resampling); });
  printTime("all of them", [&] { (void)playerProgress(history, {0, resampling}); });
  const PlayerProgress progress = playerProgress(history, {0, resampling});
  printCharts(progress);
  const Report report = buildReport(progress, {});
  printTime("report as a value", [&] { (void)buildReport(progress, {}); });
  printTime("PDF", [&] { (void)writeReportPdf(report, QPageSize::A4, folder + "/report.pdf"); });
  printTime("HTML", [&] { (void)writeReportHtml(report, folder + "/report.html"); });
  printTime("CSV", [&] { (void)reportCsv(progress); });
}

/// From a record on disk to a PDF, as the command does it.
void printWhole(int shots, const std::string& folder) {
  auto record = Record::open(folder + "/large.sqlite");
  if (!record) return;
  invented::Plan plan;
  plan.practiceShots = 100;
  plan.matchShots = 0;
  plan.weeks = std::max(1, shots / plan.practiceShots);
  const invented::Squad squad = invented::squad({invented::Habits{.name = "Invented"}}, plan);
  if (auto done = invented::putInto(*record, squad); !done) return;
  std::printf("from a record of %d shots, processor time\n", plan.weeks * plan.practiceShots);
  printTime("reading the shots", [&] { (void)playerHistory(*record, "Invented", {}); });
  printTime("the whole report", [&] {
    const auto history = playerHistory(*record, "Invented", {});
    if (!history) return;
    const PlayerProgress progress = playerProgress(*history, {});
    (void)writeReportPdf(buildReport(progress, {}), QPageSize::A4, folder + "/whole.pdf");
    (void)reportCsv(progress);
  });
}

void printAlarms(int records) {
  int alarms = 0;
  std::array<int, 9> kinds{};
  for (int i = 0; i < records; ++i) {
    invented::Plan plan;
    plan.practiceShots = 50;
    plan.matchShots = 0;
    plan.seed = static_cast<std::uint64_t>(i) + 1;
    const PlayerHistory history = invented::history(invented::Habits{.name = "Nobody"}, plan);
    const auto all = findings(history, Difficulty::of(history), strikeMeasures(history, {1, 1}),
                              aimMeasure(history, {1, 1}), {1, 999});
    bool any = false;
    for (const Finding& finding : all) {
      if (!finding.stands) continue;
      any = true;
      ++kinds[static_cast<std::size_t>(finding.kind)];
    }
    if (any) ++alarms;
  }
  const Interval interval = wilsonInterval(alarms, records);
  std::printf("false alarms: %d of %d records of no change, %.1f %% (%.1f to %.1f); by kind:", alarms, records,
              100.0 * alarms / records, 100.0 * interval.least, 100.0 * interval.most);
  for (const int kind : kinds)
    std::printf(" %d", kind);
  std::printf("\n");
}

int writeSquad(const std::string& path) {
  auto record = Record::open(path);
  const auto done = record ? invented::putInto(*record, invented::squad(invented::juniorSquad(), {}))
                           : Result<void>(tl::make_unexpected(record.error()));
  if (done) return 0;
  std::fprintf(stderr, "bench_progress: %s could not be written: %s\n", path.c_str(), done.error().detail.c_str());
  return 1;
}

}  // namespace

}  // namespace ferrule

int main(int argc, char** argv) {
  const ferrule::OwnHome home;
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  CLI::App app{"Measures statistics and reports over many shots, and counts false alarms."};
  int shots = 100'000;
  int recorded = 100'000;
  int alarms = 1000;
  std::string squad;
  app.add_option("--shots", shots, "Shots in memory; 0 leaves them out")->check(CLI::Range(0, 5'000'000));
  app.add_option("--recorded", recorded, "Shots in a record; 0 leaves it out")->check(CLI::Range(0, 5'000'000));
  app.add_option("--alarms", alarms, "Records of no change; 0 leaves them out")->check(CLI::Range(0, 100'000));
  app.add_option("--squad", squad, "Write the invented junior squad's record here and stop");
  CLI11_PARSE(app, argc, argv);
  if (!squad.empty()) return ferrule::writeSquad(squad);
  QTemporaryDir folder(QStringLiteral("/dev/shm/bench-progress-XXXXXX"));
  if (!folder.isValid()) folder = QTemporaryDir();
  const std::string path = folder.path().toStdString();
  if (shots > 0) ferrule::printMeasures(ferrule::largeHistory(shots), path);
  if (alarms > 0) ferrule::printAlarms(alarms);
  if (recorded > 0) ferrule::printWhole(recorded, path);
  return 0;
}
