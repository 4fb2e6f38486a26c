// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/drill_edits.h"

#include <algorithm>

#include "core/table/snapping.h"

namespace ferrule {

namespace {

/// A new zone: the middle of the table, a hand's breadth wide.
const Zone kNewZone{{{1.0, 0.5}}, 0.15};

/// The cushion that a ball at this place touches, nearest first.
CushionName cushionAt(TablePoint place, const MeasuredTable& measured) {
  const auto all = cushions(measured.table);
  return std::ranges::min_element(all, {}, [&](const Cushion& c) { return distanceToSegment(place, c.nose); })->name;
}

std::vector<DrillGoal> goalsOf(DrillAsk ask, const DrillStation& station) {
  std::optional<BallName> ball = firstObjectBall(station);
  PocketName pocket = PocketName::FootLeft;
  Zone zone = kNewZone;
  for (const DrillGoal& goal : station.goals) {
    if (goal.ball && !goal.ball->isCueBall()) ball = goal.ball;
    if (goal.pocket) pocket = *goal.pocket;
    if (goal.zone) zone = *goal.zone;
  }
  const DrillGoal pot{GoalKind::Pot, ball, pocket};
  const DrillGoal rest{GoalKind::Rest, {}, {}, {}, zone};
  switch (ask) {
    case DrillAsk::Pot:
      return {pot};
    case DrillAsk::PotAndRest:
      return {pot, rest};
    case DrillAsk::Rest:
      return {rest};
    case DrillAsk::ContactAndHide:
      return {{GoalKind::Contact, ball}, {GoalKind::Hidden, ball}};
    case DrillAsk::Clear:
      return {{GoalKind::Clear}};
    case DrillAsk::Other:
      return station.goals;
  }
  return station.goals;
}

}  // namespace

std::optional<BallName> firstObjectBall(const DrillStation& station) {
  if (station.balls.empty()) return std::nullopt;
  return station.balls.front().ball;
}

Drill withBall(const Drill& drill, std::size_t station, BallName ball, TablePoint near, double reach_m,
               const MeasuredTable& measured) {
  Drill changed = drill;
  DrillStation& at = changed.stations[station];
  Position others = setUpOf(at, measured);
  std::erase_if(others, [ball](const BallAt& other) { return other.ball == ball; });
  const auto place = snapped(measured.table, measured.balls.radius_m(), others, near, reach_m);
  if (!place) return drill;
  DrillBall put{ball, surfaceFromTable(measured.table, place->place)};
  if (place->kind == SnapKind::Cushion) put.frozen = cushionAt(place->place, measured);
  if (ball.isCueBall()) {
    at.cueBall = put;
    return changed;
  }
  const auto there = std::ranges::find(at.balls, ball, &DrillBall::ball);
  if (there != at.balls.end()) {
    *there = put;
  } else {
    at.balls.push_back(put);
  }
  return changed;
}

Drill withoutBall(const Drill& drill, std::size_t station, BallName ball) {
  Drill changed = drill;
  DrillStation& at = changed.stations[station];
  if (ball.isCueBall()) {
    at.cueBall.reset();
  } else {
    std::erase_if(at.balls, [ball](const DrillBall& other) { return other.ball == ball; });
  }
  return changed;
}

Drill withTarget(const Drill& drill, std::size_t station, BallName ball, PocketName pocket) {
  Drill changed = drill;
  for (DrillGoal& goal : changed.stations[station].goals) {
    if (goal.kind != GoalKind::Pot) continue;
    goal.ball = ball;
    goal.pocket = pocket;
    break;
  }
  return changed;
}

Drill withZone(const Drill& drill, std::size_t station, const Zone& zone) {
  Drill changed = drill;
  for (DrillGoal& goal : changed.stations[station].goals) {
    if (!goal.zone) continue;
    goal.zone = zone;
    break;
  }
  return changed;
}

DrillAsk askOf(const DrillStation& station) {
  std::vector<GoalKind> kinds;
  for (const DrillGoal& goal : station.goals)
    kinds.push_back(goal.kind);
  if (kinds == std::vector{GoalKind::Pot}) return DrillAsk::Pot;
  if (kinds == std::vector{GoalKind::Pot, GoalKind::Rest}) return DrillAsk::PotAndRest;
  if (kinds == std::vector{GoalKind::Rest}) return DrillAsk::Rest;
  if (kinds == std::vector{GoalKind::Contact, GoalKind::Hidden}) return DrillAsk::ContactAndHide;
  if (kinds == std::vector{GoalKind::Clear}) return DrillAsk::Clear;
  return DrillAsk::Other;
}

Drill withAsk(const Drill& drill, DrillAsk ask) {
  Drill changed = drill;
  if (ask == DrillAsk::Other) return changed;
  for (DrillStation& station : changed.stations) {
    station.goals = goalsOf(ask, station);
    station.isRun = ask == DrillAsk::Clear;
  }
  return changed;
}

}  // namespace ferrule
