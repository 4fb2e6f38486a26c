// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/play_charts.h"

#include <QCoreApplication>
#include <algorithm>
#include <functional>
#include <map>

#include "app/report/share_ticks.h"
#include "app/words/drill_words.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

struct PlayCharts {
  Q_DECLARE_TR_FUNCTIONS(PlayCharts)
};

using Shown = std::function<QString(double)>;

const QString kDot = QStringLiteral(" \u00b7 ");

/// Bars of answers; an answer that is missing says why.
class Bars {
 public:
  explicit Bars(const ReportWords& words) : words_(words) {}

  /// A share: with a bar.
  void share(const QString& label, const Answer<Estimate>& answer, int decimals = 0) {
    if (!answer) return missing(label, answer.error());
    known_ = true;
    bars_.push_back({label, answer->value, answer->interval,
                     words_.percent(answer->value, decimals) + kDot + words_.numbers().whole(answer->shots)});
  }
  /// Another number: in words alone.
  void number(const QString& label, const Answer<Estimate>& answer, const Shown& shown) {
    if (!answer) return missing(label, answer.error());
    known_ = true;
    bars_.push_back({label,
                     {},
                     {},
                     PlayCharts::tr("%1 (%2 to %3)", "value, least, most")
                             .arg(shown(answer->value), shown(answer->interval.least), shown(answer->interval.most)) +
                         kDot + words_.numbers().whole(answer->shots)});
  }
  /// A part of a count that is known.
  void part(const QString& label, int part, int whole) {
    known_ = true;
    const QString counted = PlayCharts::tr("%1 of %2").arg(words_.numbers().whole(part), words_.numbers().whole(whole));
    // Of few there is a count, but no share.
    if (whole < kFewestForShare) return bars_.push_back({label, {}, {}, counted});
    bars_.push_back({label, static_cast<double>(part) / whole, wilsonInterval(part, whole), counted});
  }

  std::optional<Chart> chart(const QString& title, const QString& below) && {
    if (!known_) return std::nullopt;
    BarChart chart;
    chart.title = title;
    chart.bars = std::move(bars_);
    chart.values = shareTicks(words_);
    chart.below = below;
    return chart;
  }

 private:
  void missing(const QString& label, const Shortage& shortage) {
    bars_.push_back({label, {}, {}, words_.shortage(shortage)});
  }

  const ReportWords& words_;
  std::vector<ChartBar> bars_;
  bool known_ = false;
};

}  // namespace

std::optional<Chart> gameChart(const PlayerProgress& progress, const ReportWords& words) {
  Bars bars(words);
  const BreakMeasure& breaks = progress.breaks;
  const Shown balls = [&](double value) { return words.numbers().fixed(value, 2); };
  bars.share(PlayCharts::tr("break: a ball and no foul"), breaks.success);
  bars.share(PlayCharts::tr("break: fouls"), breaks.fouls);
  bars.number(PlayCharts::tr("break: balls"), breaks.balls, balls);
  bars.number(PlayCharts::tr("break: cue ball from the middle"), breaks.cueBallFromMiddle_m,
              [&](double value) { return words.numbers().metres(value); });
  bars.number(PlayCharts::tr("balls in an inning"), progress.innings.balls, balls);
  bars.number(PlayCharts::tr("innings in a frame"), progress.innings.inFrame, balls);
  bars.share(PlayCharts::tr("frames won that were run out"), progress.innings.runOuts);
  bars.share(PlayCharts::tr("fouls, of all shots"), progress.fouls, 1);
  bars.share(PlayCharts::tr("easy pots missed, of easy ones"), progress.unforced);
  const Shown seconds = [&](double value) { return words.numbers().seconds(value, 1); };
  bars.number(PlayCharts::tr("time for a shot"), progress.times.all, seconds);
  bars.number(PlayCharts::tr("time before a ball that went in"), progress.times.beforeMakes, seconds);
  bars.number(PlayCharts::tr("time before a miss"), progress.times.beforeMisses, seconds);
  return std::move(bars).chart(PlayCharts::tr("The game"),
                               PlayCharts::tr("With the number counted; lines and brackets: 95\u00a0% interval."));
}

std::optional<Chart> safetyChart(const SafetyMeasure& safeties, const ReportWords& words) {
  if (safeties.tried == 0) return std::nullopt;
  Bars bars(words);
  bars.share(PlayCharts::tr("left no direct shot"), safeties.success);
  if (safeties.answered > 0) {
    bars.part(PlayCharts::tr("next player: made a ball"), safeties.potted, safeties.answered);
    bars.part(PlayCharts::tr("next player: missed"), safeties.missed, safeties.answered);
    bars.part(PlayCharts::tr("next player: safety"), safeties.safeties, safeties.answered);
    bars.part(PlayCharts::tr("next player: foul"), safeties.fouled, safeties.answered);
  }
  return std::move(bars).chart(
      PlayCharts::tr("Safeties and what came next"),
      PlayCharts::tr("No direct shot: the planner found none for the next player. Lines: 95\u00a0% interval."));
}

std::optional<Chart> positionChart(const PositionPlay& play, const ReportWords& words) {
  Bars bars(words);
  const Shown cost = [&](double value) { return words.percent(value, 1); };
  bars.share(PlayCharts::tr("on the wrong side of the next ball"), play.wrongSide);
  bars.number(PlayCharts::tr("cost on the right side"), play.lossRight, cost);
  bars.number(PlayCharts::tr("cost on the wrong side"), play.lossWrong, cost);
  bars.number(PlayCharts::tr("longer (+) or shorter than meant"), play.longBy_m,
              [&](double value) { return words.numbers().withSign(1000.0 * value, 0) + QStringLiteral("\u00a0mm"); });
  return std::move(bars).chart(
      PlayCharts::tr("Position for the next ball"),
      PlayCharts::tr(
          "Pots that fell, against the plan that was taken. Cost: of the frame's chance. Lines and brackets: "
          "95\u00a0% interval."));
}

std::optional<Chart> boxesChart(const ChoiceMeasure& choices, const ReportWords& words) {
  int all = 0;
  for (const auto& row : choices.boxes)
    all += row[0] + row[1];
  if (all < kFewestForShare) return std::nullopt;
  GridChart chart;
  chart.title = PlayCharts::tr("Choice and delivery");
  chart.note = words.shots(all);
  chart.columns = {PlayCharts::tr("well struck"), PlayCharts::tr("badly struck")};
  chart.rows = {PlayCharts::tr("good choice"), PlayCharts::tr("poor choice")};
  chart.rowKeys = {0, 1};
  for (const auto& row : choices.boxes) {
    std::vector<GridCell> cells;
    for (const int count : row) {
      const double share = static_cast<double>(count) / all;
      cells.push_back({words.numbers().whole(count), words.percents(wilsonInterval(count, all)), share});
    }
    chart.cells.push_back(std::move(cells));
  }
  chart.below = PlayCharts::tr(
      "Shots in each box and the 95\u00a0% interval of their share. Ties count as good; shots after a suggestion was "
      "shown are left out.");
  return chart;
}

std::optional<Chart> reliabilityChart(const Reliability& reliability, const ReportWords& words) {
  if (reliability.shots < kFewestForSpread) return std::nullopt;
  SeriesChart chart;
  chart.title = PlayCharts::tr("Chances as stated and as they came out");
  chart.valueName = QStringLiteral("made_percent");
  chart.note = words.shots(reliability.shots);
  for (std::size_t i = 0; i < reliability.bands.size(); ++i) {
    const ChanceBand& band = reliability.bands[i];
    if (band.tried == 0) continue;
    chart.marks.push_back({100.0 * band.predicted, 100.0 * band.share(),
                           Interval{100.0 * band.wilson->least, 100.0 * band.wilson->most},
                           words.numbers().whole(band.tried), !band.isEnough()});
    chart.marks.back().words = PlayCharts::tr("stated %1, fell %2 (%3), %4", "chance, share, interval, number of shots")
                                   .arg(words.percent(band.predicted), words.percent(band.share()),
                                        words.percents(*band.wilson), words.shots(band.tried));
    chart.marks.back().key = i;
  }
  chart.values = shareTicks(words);
  for (ChartTick& tick : chart.values)
    tick.value *= 100.0;
  for (const ChartTick& tick : chart.values) {
    if (tick.value >= chart.marks.front().place && tick.value <= chart.marks.back().place) chart.places.push_back(tick);
  }
  chart.trend = ChartTrend{chart.marks.front().place, chart.marks.back().place, chart.marks.front().place,
                           chart.marks.back().place, false};
  chart.below = PlayCharts::tr(
      "Across: the chance that the plan was given, up: the share that fell, with its 95\u00a0% interval. On the dashed "
      "line both agree. Hollow: fewer than 10.");
  return chart;
}

std::optional<ChosenDrill> chosenDrill(const PlayerHistory& history, const std::string& key) {
  std::map<std::string, int> tries;
  for (const PlayedRun& run : history.runs)
    tries[run.drill] += run.known;
  auto most = tries.find(key);
  if (key.empty()) most = std::ranges::max_element(tries, {}, [](const auto& drill) { return drill.second; });
  if (most == tries.end() || most->second == 0) return std::nullopt;
  std::vector<RunShare> shares;
  Drill named;
  for (const PlayedRun& run : history.runs) {
    if (run.drill != most->first) continue;
    named.key = run.drill;
    named.title = run.title;
    shares.push_back({run.started_ms, {run.met, run.known}});
  }
  return ChosenDrill{most->first, drillTitle(named), historyOf(shares)};
}

}  // namespace ferrule
