// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/drill_score.h"

#include <cmath>

namespace ferrule {

namespace {

MetShare shareOf(std::span<const DrillTrial* const> trials) {
  MetShare share;
  for (const DrillTrial* trial : trials) {
    const auto met = trial->succeeded();
    share.known += met ? 1 : 0;
    share.met += met == true ? 1 : 0;
  }
  return share;
}

FigureScore figureOf(const std::vector<double>& values) {
  FigureScore score;
  score.count = static_cast<int>(values.size());
  const double count = static_cast<double>(values.size());
  for (const double value : values)
    score.mean += value / count;
  if (score.count < 2) return score;
  double squares = 0.0;
  for (const double value : values)
    squares += (value - score.mean) * (value - score.mean);
  score.spread = std::sqrt(squares / (count - 1.0));
  score.meanInterval = meanInterval(score.mean, *score.spread, score.count);
  return score;
}

std::vector<GoalScore> goalsOf(std::span<const DrillTrial* const> trials, std::size_t goals) {
  std::vector<GoalScore> scores(goals);
  for (std::size_t goal = 0; goal < goals; ++goal) {
    std::vector<double> figures;
    for (const DrillTrial* trial : trials) {
      if (goal >= trial->goals.size()) continue;
      const GoalResult& result = trial->goals[goal];
      scores[goal].share.known += result.met ? 1 : 0;
      scores[goal].share.met += result.met == true ? 1 : 0;
      if (result.figure) figures.push_back(*result.figure);
    }
    if (!figures.empty()) scores[goal].figure = figureOf(figures);
  }
  return scores;
}

StationScore stationScore(std::span<const DrillTrial* const> trials, std::size_t goals) {
  StationScore score;
  score.all = shareOf(trials);
  score.goals = goalsOf(trials, goals);
  std::vector<TablePoint> leaves;
  for (const DrillTrial* trial : trials) {
    if (trial->leave) leaves.push_back(*trial->leave);
  }
  score.scatter = leaveScatter(leaves);
  return score;
}

}  // namespace

std::optional<Interval> MetShare::interval() const {
  return known > 0 ? std::optional(wilsonInterval(met, known)) : std::nullopt;
}

std::optional<double> MetShare::share() const {
  return known > 0 ? std::optional(static_cast<double>(met) / known) : std::nullopt;
}

DrillScore scoreOf(const Drill& drill, std::span<const DrillTrial> trials) {
  DrillScore score;
  std::vector<const DrillTrial*> all;
  std::vector<std::vector<const DrillTrial*>> byStation(drill.stations.size());
  for (const DrillTrial& trial : trials) {
    if (trial.station >= drill.stations.size()) continue;
    all.push_back(&trial);
    byStation[trial.station].push_back(&trial);
    score.thick += trial.missSide == MissSide::Under ? 1 : 0;
    score.thin += trial.missSide == MissSide::Over ? 1 : 0;
    score.flagged += trial.isFlagged() ? 1 : 0;
  }
  score.trials = static_cast<int>(all.size());
  score.all = shareOf(all);
  score.goals = goalsOf(all, drill.stations.empty() ? 0 : drill.stations.front().goals.size());
  for (std::size_t station = 0; station < drill.stations.size(); ++station)
    score.stations.push_back(stationScore(byStation[station], drill.stations[station].goals.size()));
  return score;
}

}  // namespace ferrule
