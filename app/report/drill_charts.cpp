// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/drill_charts.h"

#include <QCoreApplication>
#include <QDateTime>

#include "app/report/report_words.h"
#include "app/words/drill_words.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

/// Carries the translation context; lupdate finds the words by tr().
struct DrillCharts {
  Q_DECLARE_TR_FUNCTIONS(DrillCharts)
};

}  // namespace

QString runDate(std::int64_t started_ms, const Numbers& numbers) {
  return numbers.locale().toString(QDateTime::fromMSecsSinceEpoch(started_ms), QLocale::ShortFormat);
}

std::optional<Chart> historyChart(const DrillHistory& history, const QString& title, const Numbers& numbers) {
  if (history.runs.empty()) return std::nullopt;
  SeriesChart chart;
  chart.title = title;
  chart.valueName = QStringLiteral("met_percent");
  for (std::size_t i = 0; i < history.runs.size(); ++i) {
    const RunShare& run = history.runs[i];
    const Interval interval = *run.share.interval();
    chart.marks.push_back({static_cast<double>(i), 100.0 * *run.share.share(),
                           Interval{100.0 * interval.least, 100.0 * interval.most}, numbers.whole(run.share.known),
                           !run.share.isEnough()});
    chart.marks.back().words = toldOf(runDate(run.started_ms, numbers), shareWords(run.share, numbers));
    chart.marks.back().key = i;
  }
  for (const int percent : {0, 25, 50, 75, 100})
    chart.values.push_back({static_cast<double>(percent), numbers.percent(percent / 100.0)});
  chart.places.push_back({0.0, ReportWords::shortDate(history.runs.front().started_ms, numbers)});
  if (history.runs.size() > 1) {
    chart.places.push_back({static_cast<double>(history.runs.size() - 1),
                            ReportWords::shortDate(history.runs.back().started_ms, numbers)});
  }
  chart.below =
      DrillCharts::tr("Number of tries under each run; whiskers are 95\u00a0% intervals, hollow dots rest on too few.");
  return chart;
}

}  // namespace ferrule
