// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/drills/trial.h"

#include <algorithm>

namespace ferrule {

namespace {

/// What a leave alone tells of a goal; nothing where it tells nothing.
std::optional<GoalResult> fromLeave(const DrillGoal& goal, const DrillStation& station, const MeasuredTable& measured,
                                    TablePoint leave) {
  if (goal.kind == GoalKind::Rest && goal.zone && (!goal.ball || goal.ball->isCueBall())) {
    const double away_m = distanceFrom_m(*goal.zone, measured.table, leave);
    return GoalResult{away_m == 0.0, away_m};
  }
  if (goal.kind != GoalKind::AngleLeft || !goal.ball || !goal.pocket) return std::nullopt;
  const Position balls = setUpOf(station, measured);
  const BallAt* object = ballIn(balls, *goal.ball);
  if (object == nullptr) return std::nullopt;
  const double cut_rad = cutLeft_rad(leave, object->position, *goal.pocket, measured);
  const bool there = !goal.zone || distanceFrom_m(*goal.zone, measured.table, leave) == 0.0;
  return GoalResult{there && cut_rad >= goal.least_rad && cut_rad <= goal.most_rad, cut_rad};
}

}  // namespace

std::optional<bool> DrillTrial::succeeded() const {
  const auto missed = [](const GoalResult& goal) { return goal.met == false; };
  const auto open = [](const GoalResult& goal) { return !goal.met.has_value(); };
  if (std::ranges::any_of(goals, missed)) return false;
  if (goals.empty() || std::ranges::any_of(goals, open)) return std::nullopt;
  return true;
}

DrillTrial trialAsSaid(const DrillStation& station, std::size_t number, const MeasuredTable& measured,
                       const SaidTrial& said) {
  DrillTrial trial;
  trial.station = number;
  trial.leave = said.fouled ? std::nullopt : said.leave;
  trial.missSide = said.missSide;
  for (std::size_t i = 0; i < station.goals.size(); ++i) {
    GoalResult result;
    if (i == 0) {
      result.met = said.met;
    } else if (i <= said.further.size()) {
      result.met = said.further[i - 1];
    }
    if (trial.leave) result = fromLeave(station.goals[i], station, measured, *trial.leave).value_or(result);
    if (said.fouled) result = {false};
    trial.goals.push_back(result);
  }
  return trial;
}

}  // namespace ferrule
