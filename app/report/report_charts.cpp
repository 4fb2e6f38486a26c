// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/report_charts.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "app/report/share_ticks.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"
#include "core/progress/entry_angle.h"
#include "core/progress/trend_band.h"

namespace ferrule {

namespace {

constexpr double kWeek_ms = 7.0 * 24.0 * 3600.0 * 1000.0;
constexpr QChar kTo{0x2013};
constexpr QChar kDot{0x00B7};
/// More rows than these would not fit beside the words.
constexpr std::size_t kFewestMarks = 2;
/// Of a trend's band: places along it, and how often sessions are drawn for each.
constexpr int kBandPlaces = 9;
constexpr int kBandDraws = 499;

struct ChartWords {
  Q_DECLARE_TR_FUNCTIONS(ChartWords)
};

/// "80–93 % · 58"
QString intervalAndCount(const Interval& interval, int count, const ReportWords& words) {
  return words.percents(interval) + QStringLiteral(" %1 ").arg(kDot) + words.numbers().whole(count);
}

std::vector<QString> distanceWords(double width_m, const ReportWords& words) {
  std::vector<QString> rows;
  const auto metres = [&](double widths) { return words.numbers().fixed(widths * width_m, 1); };
  const QString unit = ChartWords::tr("%1 m");
  rows.push_back(unit.arg(QStringLiteral("< ") + metres(kDistanceBands_widths.front())));
  for (std::size_t i = 1; i < kDistanceBands_widths.size(); ++i)
    rows.push_back(unit.arg(metres(kDistanceBands_widths[i - 1]) + kTo + metres(kDistanceBands_widths[i])));
  rows.push_back(unit.arg(QStringLiteral("> ") + metres(kDistanceBands_widths.back())));
  return rows;
}

std::vector<QString> cutWords(const ReportWords& words) {
  std::vector<QString> columns;
  double from_rad = 0.0;
  for (const double to_rad : kCutBands_rad) {
    columns.push_back(words.numbers().fixed(degreesFromRadians(from_rad), 0) + kTo +
                      words.numbers().degrees(to_rad, 0));
    from_rad = to_rad;
  }
  return columns;
}

int triedIn(std::span<const MakeCell> cells) {
  int tried = 0;
  for (const MakeCell& cell : cells)
    tried += cell.tried;
  return tried;
}

ChartBar makeBar(const QString& label, const MakeCell& cell, const ReportWords& words) {
  ChartBar bar;
  bar.label = label;
  if (cell.isEnough()) {
    bar.value = cell.share();
    bar.interval = cell.wilson;
    bar.words = words.percent(cell.share()) + QStringLiteral(" %1 ").arg(kDot) + words.numbers().whole(cell.tried);
  } else {
    bar.words = ChartWords::tr("only %1").arg(words.numbers().whole(cell.tried));
  }
  return bar;
}

std::optional<Chart> ofMakes(BarChart chart, int tried, const ReportWords& words) {
  if (tried < kFewestForShare) return std::nullopt;
  chart.values = shareTicks(words);
  chart.below = ChartWords::tr("Made and number tried; lines: 95\u00a0% interval.");
  return chart;
}

}  // namespace

std::optional<Chart> spreadChart(const PlayerHistory& history, const ErrorMeasure& measure, const Finding& trend,
                                 SpreadUnit unit, const QString& title, const ReportWords& words) {
  if (measure.series.size() < kFewestMarks) return std::nullopt;
  const double scale = unit == SpreadUnit::Degrees ? degreesFromRadians(1.0) : 100.0;
  const auto week = [&](std::size_t session) {
    return static_cast<double>(history.sessions[session].started_ms - history.sessions.front().started_ms) / kWeek_ms;
  };
  SeriesChart chart;
  chart.title = title;
  chart.valueName = unit == SpreadUnit::Degrees ? QStringLiteral("scatter_deg") : QStringLiteral("scatter_percent");
  double most = 0.0;
  for (const SessionEstimate& session : measure.series) {
    const Estimate& estimate = session.estimate;
    const bool match = history.sessions[session.session].occasion == Occasion::Match;
    chart.marks.push_back({week(session.session), scale * estimate.value,
                           Interval{scale * estimate.interval.least, scale * estimate.interval.most},
                           words.numbers().whole(estimate.shots), match});
    const auto shown = [&](double value) {
      return unit == SpreadUnit::Degrees ? words.degrees(value) : words.percent(value, 1);
    };
    chart.marks.back().words =
        ChartWords::tr("%1: %2 (%3 to %4), %5")
            .arg(words.date(history.sessions[session.session].started_ms), shown(estimate.value),
                 shown(estimate.interval.least), shown(estimate.interval.most), words.shots(estimate.shots));
    chart.marks.back().key = session.session;
    most = std::max(most, scale * std::min(estimate.interval.most, 2.5 * estimate.value));
  }
  const double step = roundStep(most, 4);
  const int decimals = step < 0.1 ? 2 : step < 1.0 ? 1 : 0;
  for (int i = 0; (i - 1) * step < most; ++i) {
    const QString number = words.numbers().fixed(i * step, decimals);
    chart.values.push_back({i * step, unit == SpreadUnit::Degrees
                                          ? number + QChar(0x00B0)
                                          : words.numbers().percent(i * step / 100.0, decimals)});
  }
  const auto place = [&](std::size_t mark) {
    chart.places.push_back(
        {chart.marks[mark].place, words.shortDate(history.sessions[measure.series[mark].session].started_ms)});
  };
  place(0);
  if (chart.marks.size() > 4) place(chart.marks.size() / 2);
  place(chart.marks.size() - 1);
  if (!trend.shortage) {
    chart.trend = ChartTrend{chart.marks.front().place, chart.marks.back().place, scale * trend.from, scale * trend.to,
                             trend.stands};
    std::vector<SeriesPoint> points;
    for (const SessionEstimate& session : measure.series)
      points.push_back({week(session.session), scale * session.estimate.value, session.estimate.shots - 1.0});
    for (const BandPoint& at : trendBand(points, kBandPlaces, {1, kBandDraws}))
      chart.trend->band.push_back({at.when, at.value});
    chart.note = trend.stands ? ChartWords::tr("a change beyond luck") : ChartWords::tr("no change beyond luck");
  }
  const bool matches = std::ranges::any_of(chart.marks, &ChartMark::hollow);
  chart.below =
      matches ? ChartWords::tr("Whiskers and band: 95\u00a0% interval. Numbers: shots of the session. Hollow: matches.")
              : ChartWords::tr("Whiskers and band: 95\u00a0% interval. Numbers: shots of the session.");
  return chart;
}

std::optional<Chart> makeGridChart(const MakeGrid& grid, const QString& title, double tableWidth_m,
                                   const ReportWords& words) {
  if (grid.tried < kFewestForShare) return std::nullopt;
  GridChart chart;
  chart.title = title;
  chart.note = ChartWords::tr("cut across, distance down");
  chart.columns = cutWords(words);
  const std::vector<QString> distances = distanceWords(tableWidth_m, words);
  for (std::size_t r = 0; r < grid.cells.size(); ++r) {
    const auto& row = grid.cells[r];
    // A distance from which nothing was ever tried takes no room.
    if (std::ranges::all_of(row, [](const MakeCell& cell) { return cell.tried == 0; })) continue;
    chart.rows.push_back(distances[r]);
    chart.rowKeys.push_back(r);
    std::vector<GridCell> cells;
    for (const MakeCell& cell : row) {
      if (cell.tried == 0) {
        cells.push_back({QString(kTo), {}, {}});
      } else if (!cell.isEnough()) {
        cells.push_back({ChartWords::tr("only %1").arg(words.numbers().whole(cell.tried)), {}, {}});
      } else {
        cells.push_back({words.percent(cell.share()), intervalAndCount(*cell.wilson, cell.tried, words), cell.share()});
      }
    }
    chart.cells.push_back(std::move(cells));
  }
  chart.below = ChartWords::tr("Made, 95\u00a0% interval and number tried. Fewer than %1: not enough to say.")
                    .arg(words.numbers().whole(kFewestForShare));
  return chart;
}

std::optional<Chart> pocketChart(const Makes& makes, const ReportWords& words) {
  BarChart chart;
  chart.title = ChartWords::tr("Made by pocket");
  for (std::size_t i = 0; i < kPocketNames.size(); ++i)
    chart.bars.push_back(makeBar(pocketWords(kPocketNames[i]), makes.byPocket[i], words));
  return ofMakes(std::move(chart), triedIn(makes.byPocket), words);
}

std::optional<Chart> entryChart(const MakesByEntry& makes, const ReportWords& words) {
  BarChart chart;
  chart.title = ChartWords::tr("Made by the way into the pocket");
  int tried = 0;
  for (std::size_t kind = 0; kind < makes.size(); ++kind) {
    tried += triedIn(makes[kind]);
    for (std::size_t band = 0; band < kEntryBands_rad.size(); ++band) {
      const auto degrees = [&](double angle_rad) { return words.numbers().fixed(degreesFromRadians(angle_rad), 0); };
      const bool flattest = band + 1 == kEntryBands_rad.size();
      const QString from = degrees(band > 0 ? kEntryBands_rad[band - 1] : 0.0);
      const QString angles = flattest ? ChartWords::tr("over %1\u00b0").arg(from)
                                      : ChartWords::tr("%1 to %2\u00b0").arg(from, degrees(kEntryBands_rad[band]));
      const QString pocket =
          kind == 0 ? ChartWords::tr("corner, %1", "a pocket, angles") : ChartWords::tr("side, %1", "a pocket, angles");
      chart.bars.push_back(makeBar(pocket.arg(angles), makes[kind][band], words));
    }
  }
  return ofMakes(std::move(chart), tried, words);
}

std::optional<Chart> missChart(const MissSides& misses, const ReportWords& words) {
  if (misses.leftCuts.total() + misses.rightCuts.total() < kFewestForShare) return std::nullopt;
  SplitChart chart;
  chart.title = ChartWords::tr("Which side it misses");
  chart.leftWords = ChartWords::tr("too thick");
  chart.rightWords = ChartWords::tr("too thin");
  const auto add = [&](const QString& label, const MissCell& cell, std::size_t key) {
    const bool enough = cell.total() >= kFewestForShare;
    chart.rows.push_back(
        {label, cell.thick, cell.thin,
         enough ? ChartWords::tr("%1 thick").arg(words.percents(*cell.thickShare)) : ChartWords::tr("not enough"),
         key});
  };
  add(ChartWords::tr("cuts to the left"), misses.leftCuts, 0);
  add(ChartWords::tr("cuts to the right"), misses.rightCuts, 1);
  const auto shown = [&](double speed_mps) { return words.numbers().fixed(words.numbers().speedShown(speed_mps), 1); };
  for (std::size_t i = 0; i < misses.speeds.size(); ++i) {
    if (misses.speeds[i].total() == 0) continue;
    const QString to = i < kSpeedBands_mps.size() ? shown(kSpeedBands_mps[i]) : QString();
    const QString from = i > 0 ? shown(kSpeedBands_mps[i - 1]) : QString();
    const QString band = from.isEmpty() ? QStringLiteral("< ") + to
                         : to.isEmpty() ? QStringLiteral("> ") + from
                                        : from + kTo + to;
    add(ChartWords::tr("%1 %2", "a band of speed and its unit").arg(band, words.numbers().speedUnitName()),
        misses.speeds[i], 2 + i);
  }
  chart.below = ChartWords::tr("Missed cuts only. Right: 95\u00a0% interval of the share that was too thick.");
  return chart;
}

std::optional<Chart> conditionChart(const PlayerProgress& progress, const ReportWords& words) {
  BarChart chart;
  chart.title = ChartWords::tr("Like shots under other conditions");
  const auto add = [&](const QString& label, double value) {
    chart.bars.push_back({label, value, {}, words.percent(value)});
  };
  const Finding& late = findingOf(progress.findings, FindingKind::LateMakes);
  if (!late.shortage) {
    add(ChartWords::tr("first 40 minutes"), late.from);
    chart.bars.push_back({ChartWords::tr("after 40 minutes"), late.to, {}, words.percent(late.to)});
    if (late.change)
      chart.bars.back().interval = Interval{late.from + late.change->least, late.from + late.change->most};
  }
  const Finding& match = findingOf(progress.findings, FindingKind::MatchMakes);
  if (!match.shortage) {
    add(ChartWords::tr("in practice"), match.from);
    chart.bars.push_back({ChartWords::tr("in matches"), match.to, {}, words.percent(match.to)});
    if (match.change) {
      chart.bars.back().interval = Interval{match.from + match.change->least, match.from + match.change->most};
    }
  }
  if (chart.bars.empty()) return std::nullopt;
  chart.values = shareTicks(words);
  chart.below = ChartWords::tr("Made, equally hard shots; lines: 95\u00a0% interval of the difference.");
  return chart;
}

}  // namespace ferrule
