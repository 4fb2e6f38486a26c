// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/planner/planner_support.h"

#include <algorithm>

#include "core/measure/plan_situation.h"
#include "core/table/surface_coordinates.h"

namespace ferrule::testing {

const Planner& ninefoot() {
  static const Planner kPlanner = std::move(*Planner::create(Table{}, PhysicsParameters{}));
  return kPlanner;
}

BallAt ballAt(int number, double along, double across) {
  return {BallName(number), tableFromSurface(Table{}, {along, across})};
}

Situation situationOf(Game game, const Position& balls, const std::string& group) {
  std::vector<BallName> objects;
  for (const BallAt& ball : balls) {
    if (!ball.ball.isCueBall()) objects.push_back(ball.ball);
  }
  GameState state = joinedFrame(worldRules(game), objects);
  state.groupsKnown = true;
  state.groupOfFirst = groupFromText(group);
  Position sorted = balls;
  std::ranges::sort(sorted, {}, &BallAt::ball);
  return situationFrom(state, sorted, Table{});
}

Position mirroredAcross(Position balls) {
  for (BallAt& ball : balls)
    ball.position.y = -ball.position.y;
  return balls;
}

}  // namespace ferrule::testing
