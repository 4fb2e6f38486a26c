// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/figures.h"

#include <algorithm>

#include "app/report/drill_charts.h"
#include "app/report/play_charts.h"
#include "app/report/report_charts.h"
#include "app/report/shot_charts.h"
#include "app/words/drill_words.h"
#include "app/words/joining.h"
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

std::vector<std::size_t> ofPosition(const PlayerHistory& history, PositionRow row) {
  return chosen(history, [&](const PlayedShot& shot) {
    const PlayedTable& table = history.tableOf(shot);
    if (row == PositionRow::Long) return longBy_m(shot, table).has_value();
    const auto wrong = isOnWrongSide(shot, table);
    if (row == PositionRow::WrongSide) return wrong == true;
    return wrong == (row == PositionRow::LossWrong) && shot.deliveryLoss.has_value();
  });
}

std::vector<std::size_t> ofSafeties(const PlayerHistory& history, SafetyRow row) {
  return chosen(history, [&](const PlayedShot& shot) {
    if (shot.outcome != Outcome::Safety) return false;
    if (row == SafetyRow::NoDirect) return shot.safeLeave == true;
    if (!shot.reply) return false;
    switch (replyOf(*shot.reply)) {
      case ReplyKind::Potted:
        return row == SafetyRow::Potted;
      case ReplyKind::Missed:
        return row == SafetyRow::Missed;
      case ReplyKind::Safety:
        return row == SafetyRow::Safety;
      case ReplyKind::Fouled:
        return row == SafetyRow::Fouled;
    }
    return false;
  });
}

/// The first shots of the tries of a run that was counted in a session; none of a run by hand.
std::vector<std::size_t> ofRun(const PlayerHistory& history, std::size_t run) {
  // Where a drill was chosen, the history holds no other.
  const auto drill = chosenDrill(history, {});
  if (!drill || run >= drill->history.runs.size()) return {};
  return chosen(history, [&](const PlayedShot& shot) {
    return shot.drill == drill->key && history.sessions[shot.session].started_ms == drill->history.runs[run].started_ms;
  });
}

bool hasTime(const PlayedShot& shot) {
  return shot.preparation_s && *shot.preparation_s >= 0.0 && *shot.preparation_s <= kLongestPreparation_s;
}

std::vector<std::size_t> ofGame(const PlayerProgress& progress, GameRow row) {
  const auto difficulty = row == GameRow::Unforced ? Difficulty::of(progress.history) : std::nullopt;
  return chosen(progress.history, [&](const PlayedShot& shot) {
    switch (row) {
      case GameRow::BreakSuccess:
      case GameRow::BreakBalls:
        return shot.outcome == Outcome::Break;
      case GameRow::BreakFouls:
        return shot.outcome == Outcome::Break && shot.foul;
      case GameRow::BreakRest:
        return shot.outcome == Outcome::Break && shot.rest.has_value();
      case GameRow::Innings:
        return true;
      case GameRow::InFrame:
        return !shot.game.empty();
      case GameRow::RunOuts:
        return shot.wonFrame;
      case GameRow::Fouls:
        return shot.foul;
      case GameRow::Unforced:
        return difficulty && isPotAttempt(shot) && (!shot.made || shot.foul) &&
               difficulty->chance(shot, progress.history.tableOf(shot)) >= kUnforced;
      case GameRow::Time:
        return hasTime(shot);
      case GameRow::TimeMade:
        return hasTime(shot) && isPotAttempt(shot) && shot.made;
      case GameRow::TimeMissed:
        return hasTime(shot) && isPotAttempt(shot) && !shot.made;
    }
    return false;
  });
}

}  // namespace

std::vector<Figure> figuresOf(const PlayerProgress& progress, const ReportWords& words, const std::string& drill) {
  std::vector<Figure> figures;
  const PlayerHistory& history = progress.history;
  if (history.shots.empty() && history.runs.empty()) return figures;
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
  const auto addDrill = [&] {
    const auto chosen = chosenDrill(history, drill);
    const QString title = chosen ? FigureWords::tr("Drill: %1").arg(chosen->name) : FigureWords::tr("Drill");
    add(FigureKind::Drill, title, chosen ? historyChart(chosen->history, title, words.numbers()) : std::nullopt,
        FigureWords::tr("no run of a drill in this selection"));
    if (chosen && figures.back().chart) {
      auto& below = std::get<SeriesChart>(*figures.back().chart).below;
      below = sentencesOf({changeSentence(chosen->history, words.numbers()), below});
    }
  };
  if (history.shots.empty()) {
    addDrill();
    return figures;
  }
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
  grid(FigureKind::MakesByCueBall, FigureWords::tr("Made, by cut and distance of the cue ball"), makes.byCueBall);
  grid(FigureKind::MakesByObjectBall, FigureWords::tr("Made, by cut and distance to the pocket"), makes.byObjectBall);
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
  add(FigureKind::Entries, FigureWords::tr("Made by the way into the pocket"), entryChart(makes.byEntry, words),
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
  const auto why = [&](const Answer<Estimate>& answer) { return answer ? QString() : words.shortage(answer.error()); };
  add(FigureKind::Boxes, FigureWords::tr("Choice and delivery"), boxesChart(progress.choices, words),
      progress.choices.choiceLoss ? tooFew(progress.choices.choiceLoss->shots, kFewestForShare)
                                  : words.shortage(progress.choices.choiceLoss.error()));
  add(FigureKind::NextBall, FigureWords::tr("Position for the next ball"), positionChart(progress.position, words),
      why(progress.position.wrongSide));
  add(FigureKind::Reliability, FigureWords::tr("Chances as stated and as they came out"),
      reliabilityChart(progress.reliability, words),
      progress.reliability.shots == 0 ? why(progress.reliability.gap)
                                      : tooFew(progress.reliability.shots, kFewestForSpread));
  add(FigureKind::Game, FigureWords::tr("The game"), gameChart(progress, words), why(progress.fouls));
  add(FigureKind::Safeties, FigureWords::tr("Safeties and what came next"), safetyChart(progress.safeties, words),
      FigureWords::tr("no safety in this selection"));
  addDrill();
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
    case FigureKind::Entries:
      return chosen(history, [&](const PlayedShot& shot) {
        const auto entry_rad = entryAngle_rad(shot, history.tableOf(shot));
        if (!attempted(shot) || !entry_rad) return false;
        const std::size_t group = isSidePocket(*shot.pocket) ? 1 : 0;
        return spot.key == group * kEntryBands_rad.size() + entryBand(*entry_rad);
      });
    case FigureKind::MissSides:
      return missed(history, spot);
    case FigureKind::Conditions:
      return underConditions(progress, spot.key);
    case FigureKind::Boxes:
      return chosen(history, [&](const PlayedShot& shot) {
        return !shot.suggestionShown && shot.choiceLoss && shot.deliveryLoss &&
               (*shot.choiceLoss > kTie) == (spot.key == 1) && (*shot.deliveryLoss > kTie) == (spot.column == 1);
      });
    case FigureKind::NextBall:
      return ofPosition(history, static_cast<PositionRow>(spot.key));
    case FigureKind::Reliability:
      return chosen(history, [&](const PlayedShot& shot) {
        return hasPrediction(shot) && chanceBand(*shot.potChance) == spot.key;
      });
    case FigureKind::Game:
      return ofGame(progress, static_cast<GameRow>(spot.key));
    case FigureKind::Safeties:
      return ofSafeties(history, static_cast<SafetyRow>(spot.key));
    case FigureKind::Drill:
      return ofRun(history, spot.key);
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
