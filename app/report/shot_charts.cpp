// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/report/shot_charts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/base/contract.h"
#include "core/geometry/units.h"
#include "core/progress/shot_errors.h"

namespace ferrule {

namespace {

struct ShotChartWords {
  Q_DECLARE_TR_FUNCTIONS(ShotChartWords)
};

/// Of the tip point from the ball's middle, in all. Common practice, no source.
constexpr double kMiscueLimit_radii = 0.5;
constexpr double kMillimetres = 1000.0;

/// One shot's place in a plane.
struct Spot {
  double x = 0.0;
  double y = 0.0;
  std::size_t shot = 0;
};

template <class Place>
std::vector<Spot> spotsOf(const PlayerHistory& history, Place&& placeOf) {
  std::vector<Spot> spots;
  for (std::size_t i = 0; i < history.shots.size(); ++i) {
    if (const std::optional<std::array<double, 2>> place = placeOf(history.shots[i], i))
      spots.push_back({(*place)[0], (*place)[1], i});
  }
  return spots;
}

std::vector<Spot> targetSpots(const PlayerHistory& history, std::span<const Asked> asked) {
  return spotsOf(history, [&](const PlayedShot& shot, std::size_t i) -> std::optional<std::array<double, 2>> {
    const auto aim = aimError_rad(shot, history.tableOf(shot));
    if (!aim || !shot.speed_mps || !asked[i].speed_mps || *asked[i].speed_mps <= 0.0) return std::nullopt;
    // An aim to the left stands on the left.
    return std::array{-degreesFromRadians(*aim), 100.0 * (*shot.speed_mps / *asked[i].speed_mps - 1.0)};
  });
}

std::vector<Spot> tipSpots(const PlayerHistory& history) {
  return spotsOf(history, [](const PlayedShot& shot, std::size_t) -> std::optional<std::array<double, 2>> {
    if (!shot.side || !shot.height) return std::nullopt;
    return std::array{*shot.side, *shot.height};
  });
}

/// In the unit that is shown.
std::vector<Spot> speedSpots(const PlayerHistory& history, std::span<const Asked> asked, const Numbers& numbers) {
  return spotsOf(history, [&](const PlayedShot& shot, std::size_t i) -> std::optional<std::array<double, 2>> {
    if (!shot.speed_mps || !asked[i].speed_mps) return std::nullopt;
    return std::array{numbers.speedShown(*asked[i].speed_mps), numbers.speedShown(*shot.speed_mps)};
  });
}

std::vector<Spot> restSpots(const PlayerHistory& history, std::span<const Asked> asked) {
  return spotsOf(history, [&](const PlayedShot& shot, std::size_t i) -> std::optional<std::array<double, 2>> {
    if (!shot.rest || !asked[i].rest) return std::nullopt;
    return std::array{kMillimetres * (shot.rest->x - asked[i].rest->x),
                      kMillimetres * (shot.rest->y - asked[i].rest->y)};
  });
}

std::vector<Spot> missSpots(const PlayerHistory& history) {
  return spotsOf(history, [](const PlayedShot& shot, std::size_t) -> std::optional<std::array<double, 2>> {
    // A straight shot has no thick and thin.
    if (!isPotAttempt(shot) || shot.made || !shot.missSide || !shot.cutSide || !shot.objectBall || !shot.pocket)
      return std::nullopt;
    return std::array{shot.objectBall->x, shot.objectBall->y};
  });
}

/// The distance from 0 that holds all but the farthest hundredth; those stand outside the plane and are counted.
double reachOf(const std::vector<Spot>& spots, double Spot::*part) {
  std::vector<double> away;
  for (const Spot& spot : spots)
    away.push_back(std::abs(spot.*part));
  std::ranges::sort(away);
  return away.empty() ? 1.0 : away[(away.size() - 1) * 99 / 100];
}

/// From -most to most, outwards to a whole step.
template <class Shown>
std::vector<ChartTick> aroundZero(double most, Shown&& shown) {
  const double step = roundStep(most, 2);
  const int steps = std::max(1, static_cast<int>(std::ceil(most / step - 1e-9)));
  const int decimals = step < 0.1 ? 2 : step < 1.0 ? 1 : 0;
  std::vector<ChartTick> ticks;
  for (int i = -steps; i <= steps; ++i)
    ticks.push_back({i * step, shown(i * step, decimals)});
  return ticks;
}

ChartOutline ring(double x, double y, double radius, bool dashed = false) {
  ChartOutline outline;
  outline.dashed = dashed;
  for (int i = 0; i <= 72; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / 72;
    outline.points.emplace_back(x + radius * std::cos(angle), y + radius * std::sin(angle));
  }
  return outline;
}

/// "2 Mar 2026, shot 12: "
QString shotWords(const PlayerHistory& history, std::size_t i, const ReportWords& words) {
  const PlayedShot& shot = history.shots[i];
  return ShotChartWords::tr("%1, shot %2")
      .arg(words.date(history.sessions[shot.session].started_ms), words.numbers().whole(shot.number));
}

template <class Kind, class Told>
void addPoints(Kind& chart, const PlayerHistory& history, const std::vector<Spot>& spots, const ReportWords& words,
               Told&& told) {
  const std::size_t first = spots.size() > kMostPoints ? spots.size() - kMostPoints : 0;
  for (std::size_t k = first; k < spots.size(); ++k) {
    const Spot& spot = spots[k];
    const PlayedShot& shot = history.shots[spot.shot];
    const bool hollow = isPotAttempt(shot) && !shot.made;
    chart.points.push_back({spot.x, spot.y, hollow ? PointKind::Hollow : PointKind::Filled,
                            toldOf(shotWords(history, spot.shot, words), told(spot)), spot.shot});
  }
  chart.note = first > 0 ? ShotChartWords::tr("the last %1 of %2 shots")
                               .arg(words.numbers().whole(static_cast<long long>(kMostPoints)),
                                    words.numbers().whole(static_cast<long long>(spots.size())))
                         : words.shots(static_cast<int>(spots.size()));
}

std::optional<ChartEllipse> ellipseOf(const std::vector<Spot>& spots) {
  std::vector<std::array<double, 2>> points;
  for (const Spot& spot : spots)
    points.push_back({spot.x, spot.y});
  const auto ellipse = spreadEllipse(points);
  if (!ellipse) return std::nullopt;
  return ChartEllipse{ellipse->x, ellipse->y, ellipse->longHalf, ellipse->shortHalf, ellipse->turn_rad};
}

/// How far an ellipse reaches from 0, across and up.
std::array<double, 2> reachOf(const std::optional<ChartEllipse>& ellipse) {
  if (!ellipse) return {0.0, 0.0};
  const double c = std::cos(ellipse->turn_rad);
  const double s = std::sin(ellipse->turn_rad);
  return {std::abs(ellipse->x) + std::hypot(ellipse->longHalf * c, ellipse->shortHalf * s),
          std::abs(ellipse->y) + std::hypot(ellipse->longHalf * s, ellipse->shortHalf * c)};
}

void setPlane(PointChart& chart) {
  chart.left = chart.across.front().value;
  chart.right = chart.across.back().value;
  chart.bottom = chart.up.front().value;
  chart.top = chart.up.back().value;
}

/// Whether any of the shots was compared with the player's own repeats.
template <class FromRepeats>
QString askedWords(std::span<const Asked> asked, FromRepeats&& fromRepeats) {
  return std::ranges::any_of(asked, fromRepeats)
             ? ShotChartWords::tr("Where nobody said what was meant, the mean of the repeated set-up stands in.")
             : QString();
}

}  // namespace

int targetCount(const PlayerHistory& history, std::span<const Asked> asked) {
  return static_cast<int>(targetSpots(history, asked).size());
}
int tipCount(const PlayerHistory& history) {
  return static_cast<int>(tipSpots(history).size());
}
int speedAskedCount(const PlayerHistory& history, std::span<const Asked> asked) {
  return static_cast<int>(speedSpots(history, asked, Numbers()).size());
}
int restCount(const PlayerHistory& history, std::span<const Asked> asked) {
  return static_cast<int>(restSpots(history, asked).size());
}
int missMapCount(const PlayerHistory& history) {
  return static_cast<int>(missSpots(history).size());
}

std::optional<Chart> targetChart(const PlayerHistory& history, std::span<const Asked> asked, const ReportWords& words) {
  FERRULE_REQUIRE(asked.size() == history.shots.size());
  const auto spots = targetSpots(history, asked);
  if (spots.size() < static_cast<std::size_t>(kFewestForSpread)) return std::nullopt;
  PointChart chart;
  chart.title = ShotChartWords::tr("Deliveries on the target");
  chart.acrossName = QStringLiteral("aim_error_deg");  // + to the right, as it is drawn
  chart.upName = QStringLiteral("speed_error_percent");
  chart.ellipse = ellipseOf(spots);
  const auto [ellipseAcross, ellipseUp] = reachOf(chart.ellipse);
  chart.across = aroundZero(std::max(ellipseAcross, reachOf(spots, &Spot::x)), [&](double value, int decimals) {
    return words.numbers().withSign(value, decimals) + QChar(0x00B0);
  });
  chart.up = aroundZero(std::max(ellipseUp, reachOf(spots, &Spot::y)), [&](double value, int decimals) {
    return words.numbers().signedPercent(value / 100.0, decimals);
  });
  chart.acrossWords = ShotChartWords::tr("aim: left \u2013 right");
  chart.upWords = ShotChartWords::tr("speed: harder, softer");
  setPlane(chart);
  addPoints(chart, history, spots, words, [&](const Spot& spot) {
    return ShotChartWords::tr("aim %1°, speed %2")
        .arg(words.numbers().withSign(spot.x, 2), words.numbers().signedPercent(spot.y / 100.0));
  });
  chart.below = sentencesOf({ShotChartWords::tr("Hollow: missed pots. Ellipse: 95 of 100 shots."),
                             askedWords(asked, [](const Asked& one) { return one.speedFromRepeats; })});
  return chart;
}

std::optional<Chart> tipChart(const PlayerHistory& history, const ReportWords& words) {
  const auto spots = tipSpots(history);
  if (spots.size() < static_cast<std::size_t>(kFewestForSpread)) return std::nullopt;
  PointChart chart;
  chart.title = ShotChartWords::tr("Where the tip met the ball");
  chart.acrossName = QStringLiteral("side_radii");
  chart.upName = QStringLiteral("height_radii");
  chart.left = chart.bottom = -1.02;
  chart.right = chart.top = 1.02;
  chart.equal = true;
  chart.outlines = {ring(0.0, 0.0, 1.0), ring(0.0, 0.0, kMiscueLimit_radii, true)};
  addPoints(chart, history, spots, words, [&](const Spot& spot) {
    return ShotChartWords::tr("side %1 R, height %2 R")
        .arg(words.numbers().withSign(spot.x, 2), words.numbers().withSign(spot.y, 2));
  });
  chart.below = ShotChartWords::tr("As seen along the cue. Dashed: miscue limit. Hollow: missed pots.");
  return chart;
}

std::optional<Chart> speedAskedChart(const PlayerHistory& history, std::span<const Asked> asked,
                                     const ReportWords& words) {
  FERRULE_REQUIRE(asked.size() == history.shots.size());
  const auto spots = speedSpots(history, asked, words.numbers());
  if (spots.size() < static_cast<std::size_t>(kFewestForSpread)) return std::nullopt;
  PointChart chart;
  chart.title = ShotChartWords::tr("Speed asked and delivered");
  const double most = std::max(reachOf(spots, &Spot::x), reachOf(spots, &Spot::y));
  const double step = roundStep(most, 4);
  for (int i = 0; (i - 1) * step < most; ++i)
    chart.up.push_back({i * step, words.numbers().fixed(i * step, step < 1.0 ? 1 : 0)});
  chart.across = chart.up;
  const QString unit = words.numbers().speedUnitName();
  chart.acrossWords = ShotChartWords::tr("asked, %1", "a unit of speed").arg(unit);
  chart.upWords = ShotChartWords::tr("delivered, %1", "a unit of speed").arg(unit);
  const QString inFiles = toSetting(words.numbers().speedUnit()).replace(QLatin1Char('/'), QLatin1Char('_'));
  chart.acrossName = QStringLiteral("asked_") + inFiles;
  chart.upName = QStringLiteral("delivered_") + inFiles;
  setPlane(chart);
  chart.equal = true;
  chart.outlines = {{{{chart.left, chart.bottom}, {chart.right, chart.top}}, true}};
  addPoints(chart, history, spots, words, [&](const Spot& spot) {
    const double unit_mps = words.numbers().mpsPerUnit();
    return ShotChartWords::tr("asked %1, delivered %2", "two speeds")
        .arg(words.numbers().speed(spot.x * unit_mps), words.numbers().speed(spot.y * unit_mps));
  });
  chart.below = sentencesOf({ShotChartWords::tr("On the dashed line both agree. Hollow: missed pots."),
                             askedWords(asked, [](const Asked& one) { return one.speedFromRepeats; })});
  return chart;
}

std::optional<Chart> restChart(const PlayerHistory& history, std::span<const Asked> asked, const ReportWords& words) {
  FERRULE_REQUIRE(asked.size() == history.shots.size());
  const auto spots = restSpots(history, asked);
  if (spots.size() < static_cast<std::size_t>(kFewestForSpread)) return std::nullopt;
  PointChart chart;
  chart.title = ShotChartWords::tr("Where the cue ball came to rest");
  chart.acrossName = QStringLiteral("along_mm");
  chart.upName = QStringLiteral("across_mm");
  chart.ellipse = ellipseOf(spots);
  const auto [ellipseAcross, ellipseUp] = reachOf(chart.ellipse);
  chart.up = aroundZero(std::max({ellipseAcross, ellipseUp, reachOf(spots, &Spot::x), reachOf(spots, &Spot::y)}),
                        [&](double value, int decimals) { return words.numbers().withSign(value, decimals); });
  chart.across = chart.up;
  chart.acrossWords = ShotChartWords::tr("along the table, + to the foot, mm");
  chart.upWords = ShotChartWords::tr("across the table, mm");
  setPlane(chart);
  chart.equal = true;
  addPoints(chart, history, spots, words, [&](const Spot& spot) {
    return ShotChartWords::tr("%1 mm along, %2 mm across")
        .arg(words.numbers().withSign(spot.x, 0), words.numbers().withSign(spot.y, 0));
  });
  chart.below = sentencesOf(
      {ShotChartWords::tr("The middle is where it was asked to rest. Ellipse: 95 of 100 shots."),
       askedWords(asked, [](const Asked& one) { return one.restFromRepeats; }),
       std::ranges::any_of(asked, &Asked::restFromPlan)
           ? ShotChartWords::tr("Where nobody said, the leave of the plan stands in that the shot was read as.")
           : QString()});
  return chart;
}

std::optional<Chart> missMapChart(const PlayerHistory& history, const ReportWords& words) {
  const auto spots = missSpots(history);
  if (spots.size() < static_cast<std::size_t>(kFewestForShare)) return std::nullopt;
  MapChart chart;
  chart.title = ShotChartWords::tr("Miss map");
  chart.table = history.tables.front().table;
  std::array<std::array<int, 2>, kPocketNames.size()> counts{};  // [pocket][thick, thin]
  for (const Spot& spot : spots) {
    const PlayedShot& shot = history.shots[spot.shot];
    ++counts[static_cast<std::size_t>(*shot.pocket)][shot.missSide == MissSide::Under ? 0 : 1];
  }
  for (const Pocket& pocket : pockets(chart.table)) {
    const auto& [thick, thin] = counts[static_cast<std::size_t>(pocket.name)];
    chart.labels.push_back(
        {pocket.hole.x, pocket.hole.y,
         ShotChartWords::tr("%1 thick, %2 thin").arg(words.numbers().whole(thick), words.numbers().whole(thin))});
  }
  addPoints(chart, history, spots, words, [&](const Spot& spot) {
    const PlayedShot& shot = history.shots[spot.shot];
    return (shot.missSide == MissSide::Under ? ShotChartWords::tr("too thick, %1, cut %2")
                                             : ShotChartWords::tr("too thin, %1, cut %2"))
        .arg(pocketWords(*shot.pocket), words.numbers().degrees(*shot.cut_rad, 0));
  });
  for (ChartPoint& point : chart.points)
    point.kind = history.shots[point.key].missSide == MissSide::Under ? PointKind::Filled : PointKind::Hollow;
  chart.below = ShotChartWords::tr(
      "Object balls that were missed, head on the left. Filled: too thick, hollow: too thin. At the pockets: what was "
      "missed there.");
  return chart;
}

}  // namespace ferrule
