// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/figures.h"

#include <algorithm>

#include "app/report/report_charts.h"
#include "app/report/shot_charts.h"
#include "core/progress/shot_errors.h"

namespace ferrule {

namespace {

struct FigureWords {
  Q_DECLARE_TR_FUNCTIONS(FigureWords)
};

template <class Takes>
std::vector<std::size_t> chosen(const PlayerHistory& history, Takes&& takes) {
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < history.shots.size(); ++i) {
    if (takes(history.shots[i])) places.push_back(i);
  }
  return places;
}

bool isInSpeedBand(const PlayedShot& shot, std::size_t band) {
  if (!shot.speed_mps) return false;
  const auto end = std::ranges::upper_bound(kSpeedBands_mps, *shot.speed_mps);
  return static_cast<std::size_t>(end - kSpeedBands_mps.begin()) == band;
}

std::vector<std::size_t> missed(const PlayerHistory& history, const ChartSpot& spot) {
  const MissSide side = spot.column == 0 ? MissSide::Under : MissSide::Over;
  return chosen(history, [&](const PlayedShot& shot) {
    if (!isPotAttempt(shot) || shot.made || shot.missSide != side || !shot.cutSide) return false;
    if (spot.key == 0) return shot.cutSide == CutSide::Left;
    if (spot.key == 1) return shot.cutSide == CutSide::Right;
    return isInSpeedBand(shot, spot.key - 2);
  });
}

std::vector<std::size_t> underConditions(const PlayerProgress& progress, std::size_t bar) {
  const PlayerHistory& history = progress.history;
  const bool hasLate = !findingOf(progress.findings, FindingKind::LateMakes).shortage;
  const bool ofTime = hasLate && bar < 2;
  const bool second = bar % 2 == 1;
  return chosen(history, [&](const PlayedShot& shot) {
    if (!isPotAttempt(shot)) return false;
    if (ofTime) return shot.minutes && (*shot.minutes >= kLate_min) == second;
    return (history.sessions[shot.session].occasion == Occasion::Match) == second;
  });
}

}  // namespace

std::vector<Figure> figuresOf(const PlayerProgress& progress, const ReportWords& words) {
  std::vector<Figure> figures;
  const PlayerHistory& history = progress.history;
  if (history.shots.empty()) return figures;
  const auto add = [&](FigureKind kind, const QString& title, std::optional<Chart> chart, const QString& why) {
    figures.push_back({kind, title, std::move(chart), {}});
    Figure& figure = figures.back();
    if (!figure.chart) figure.otherwise = why;
  };
  const auto tooFew = [&](int have, int need) { return words.shortage({ShortageKind::Shots, have, need}); };
  const QString fewSessions =
      FigureWords::tr("not enough yet: two sessions with %1 or more are needed").arg(words.shots(kFewestInSession));
  const auto series = [&](FigureKind kind, const QString& title, const ErrorMeasure& measure, FindingKind trend,
                          SpreadUnit unit) {
    add(kind, title, spreadChart(history, measure, findingOf(progress.findings, trend), unit, title, words),
        measure.spread ? fewSessions : words.shortage(measure.spread.error()));
  };
  const Makes& makes = progress.mainMakes();
  const double width_m = history.tables.front().table.width_m;
  const auto grid = [&](FigureKind kind, const QString& title, const MakeGrid& cells) {
    add(kind, title, makeGridChart(cells, title, width_m, words), tooFew(cells.tried, kFewestForShare));
  };
  const std::vector<Asked> asked = askedOf(history);
  const ErrorMeasure& speed = progress.strikes.speed;
  series(FigureKind::AimTrend, FigureWords::tr("Scatter of the aim"), progress.aim.all, FindingKind::AimTrend,
         SpreadUnit::Degrees);
  series(FigureKind::SpeedTrend,
         speed.fromRepeats ? FigureWords::tr("Scatter of the speed in repeated set-ups")
                           : FigureWords::tr("Scatter of the speed"),
         speed, FindingKind::SpeedTrend, SpreadUnit::Percent);
  grid(FigureKind::MakesByCueBall, FigureWords::tr("Made, by cut and way of the cue ball"), makes.byCueBall);
  grid(FigureKind::MakesByObjectBall, FigureWords::tr("Made, by cut and way of the object ball"), makes.byObjectBall);
  add(FigureKind::Target, FigureWords::tr("Deliveries on the target"), targetChart(history, asked, words),
      tooFew(targetCount(history, asked), kFewestForSpread));
  add(FigureKind::MissMap, FigureWords::tr("Miss map"), missMapChart(history, words),
      tooFew(missMapCount(history), kFewestForShare));
  const MissSides& misses = progress.misses;
  add(FigureKind::MissSides, FigureWords::tr("Which side it misses"), missChart(misses, words),
      tooFew(misses.leftCuts.total() + misses.rightCuts.total(), kFewestForShare));
  int tried = 0;
  for (const MakeCell& cell : makes.byPocket)
    tried += cell.tried;
  add(FigureKind::Pockets, FigureWords::tr("Made by pocket"), pocketChart(makes, words),
      tooFew(tried, kFewestForShare));
  add(FigureKind::SpeedAsked, FigureWords::tr("Speed asked and delivered"), speedAskedChart(history, asked, words),
      tooFew(speedAskedCount(history, asked), kFewestForSpread));
  add(FigureKind::Rest, FigureWords::tr("Where the cue ball came to rest"), restChart(history, asked, words),
      tooFew(restCount(history, asked), kFewestForSpread));
  add(FigureKind::TipPoint, FigureWords::tr("Where the tip met the ball"), tipChart(history, words),
      tooFew(tipCount(history), kFewestForSpread));
  const Finding& late = findingOf(progress.findings, FindingKind::LateMakes);
  add(FigureKind::Conditions, FigureWords::tr("Like shots under other conditions"), conditionChart(progress, words),
      late.shortage ? words.shortage(*late.shortage) : QString());
  return figures;
}

std::vector<std::size_t> shotsBehind(const PlayerProgress& progress, FigureKind kind, const ChartSpot& spot) {
  const PlayerHistory& history = progress.history;
  const Intent intent = progress.mainIntent();
  const auto attempted = [&](const PlayedShot& shot) { return isPotAttempt(shot) && shot.intent == intent; };
  switch (kind) {
    case FigureKind::AimTrend:
      return chosen(history, [&](const PlayedShot& shot) {
        return shot.session == spot.key && aimError_rad(shot, history.tableOf(shot));
      });
    case FigureKind::SpeedTrend: {
      const auto asked = askedOf(history);
      std::vector<std::size_t> places;
      for (std::size_t i = 0; i < asked.size(); ++i) {
        const PlayedShot& shot = history.shots[i];
        if (shot.session == spot.key && shot.speed_mps && asked[i].speed_mps &&
            asked[i].speedFromRepeats == progress.strikes.speed.fromRepeats)
          places.push_back(i);
      }
      return places;
    }
    case FigureKind::MakesByCueBall:
    case FigureKind::MakesByObjectBall:
      return chosen(history, [&](const PlayedShot& shot) {
        const auto& way = kind == FigureKind::MakesByCueBall ? shot.cueToGhost_m : shot.objectToPocket_m;
        return attempted(shot) && way && cutBand(*shot.cut_rad) == spot.column &&
               distanceBand(*way, history.tableOf(shot).table.width_m) == spot.key;
      });
    case FigureKind::Pockets:
      return chosen(history,
                    [&](const PlayedShot& shot) { return attempted(shot) && shot.pocket == kPocketNames[spot.key]; });
    case FigureKind::MissSides:
      return missed(history, spot);
    case FigureKind::Conditions:
      return underConditions(progress, spot.key);
    case FigureKind::MissMap:
    case FigureKind::Target:
    case FigureKind::TipPoint:
    case FigureKind::SpeedAsked:
    case FigureKind::Rest:
      return {spot.key};
  }
  return {};
}

}  // namespace ferrule
