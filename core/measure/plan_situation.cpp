// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/plan_situation.h"

#include <algorithm>

namespace ferrule {

namespace {

constexpr double kRacked_m = 0.006;

BallMask maskOf(Group group) {
  return group == Group::Solids ? kSolids : kStripes;
}

CueBallFreedom freedomOf(CueBallPlace place) {
  switch (place) {
    case CueBallPlace::InHandAnywhere:
      return CueBallFreedom::Anywhere;
    case CueBallPlace::InHandBehindString:
      return CueBallFreedom::BehindString;
    case CueBallPlace::AsItLies:
    case CueBallPlace::OnHeadSpot:
    case CueBallPlace::OnCentreSpot:
      break;
  }
  return CueBallFreedom::AsItLies;
}

}  // namespace

PlannerRules plannerRules(const RuleSet& rules) {
  PlannerRules p;
  p.ballsToRailOnBreak = rules.house.ballsToRailOnBreak;
  p.afterScratch = rules.house.scratchAlwaysBehindString ? CueBallFreedom::BehindString : CueBallFreedom::Anywhere;
  p.afterFoul = rules.house.inHandOnlyAfterScratch ? CueBallFreedom::AsItLies : CueBallFreedom::Anywhere;
  p.afterBreakScratch = p.afterScratch;
  switch (rules.game) {
    case Game::EightBall:
      p.decider = BallName(8);
      p.decidesOnBreak = rules.house.eightOnBreakWins;
      if (rules.house.breakScratchBehindString) p.afterBreakScratch = CueBallFreedom::BehindString;
      // With only the 8 called, or nothing, a slop pot keeps the turn as well; a search that calls is right in both.
      break;
    case Game::NineBall:
      p.first = FirstContactRule::Lowest;
      p.deciderRule = DeciderRule::AnyTime;
      p.decider = BallName(9);
      p.called = false;
      p.decidesOnBreak = true;
      p.weakBreakIsFoul = true;
      break;
    case Game::TenBall:
      p.first = FirstContactRule::Lowest;
      p.deciderRule = DeciderRule::Called;
      p.decider = BallName(10);
      p.weakBreakIsFoul = true;
      break;
    case Game::StraightPool:
      p.first = FirstContactRule::Any;
      p.deciderRule = DeciderRule::None;
      p.points = true;
      p.spotsWrongPots = true;
      p.afterScratch = CueBallFreedom::BehindString;
      p.afterFoul = CueBallFreedom::AsItLies;
      p.afterBreakScratch = CueBallFreedom::BehindString;
      p.ballsToRailOnBreak = 2;
      p.weakBreakIsFoul = true;
      break;
  }
  return p;
}

Situation situationFrom(const GameState& state, const Position& balls, const Table& table) {
  Situation s;
  s.rules = plannerRules(state.rules);
  s.headString_m = headString_m(table);
  s.footSpot = footSpot(table);
  s.breakShot = state.phase == Phase::Break;
  s.cueBall = freedomOf(state.cueBall);
  for (const BallAt& ball : balls) {
    if (ball.ball.isCueBall() || isOnTable(state, ball.ball)) s.balls.push_back(ball);
  }
  switch (state.rules.game) {
    case Game::EightBall: {
      const auto group = groupOf(state, state.atTable);
      s.open = !group;
      s.own = maskOf(group.value_or(Group::Solids));
      s.other = maskOf(otherGroup(group.value_or(Group::Solids)));
      break;
    }
    case Game::NineBall:
      s.own = s.other = BallMask::range(1, 8);
      break;
    case Game::TenBall:
      s.own = s.other = BallMask::range(1, 9);
      break;
    case Game::StraightPool:
      s.own = s.other = BallMask::range(1, 15);
      break;
  }
  return s;
}

Judgement judgementFrom(const Ruling& ruling, const GameState& after, const Position& balls, const Table& table) {
  Judgement judged;
  judged.potted = ruling.pot.has_value();
  judged.foul = !ruling.fouls.empty();
  judged.scratch = ballIn(balls, kCueBall) == nullptr;
  judged.points = ruling.points.value[indexOf(ruling.shooter)];
  if (ruling.result) {
    judged.ending = ruling.result->value.winner == ruling.shooter ? ShotEnding::Win : ShotEnding::Loss;
    return judged;
  }
  judged.ending = after.atTable == ruling.shooter ? ShotEnding::KeepsTurn
                  : judged.foul                   ? ShotEnding::Foul
                                                  : ShotEnding::PassesTurn;
  judged.next = situationFrom(after, balls, table);
  // A cue ball in hand lies nowhere yet.
  if (judged.next.cueBall != CueBallFreedom::AsItLies)
    std::erase_if(judged.next.balls, [](const BallAt& ball) { return ball.ball.isCueBall(); });
  return judged;
}

bool isRacked(Game game, const Position& balls, const Table& table, const BallSet& set) {
  const auto places = rackPlaces(rackOf(game), table, set);
  std::size_t racked = 0;
  for (const BallAt& ball : balls) {
    if (ball.ball.isCueBall()) continue;
    const bool onPlace =
        std::ranges::any_of(places, [&](TablePoint place) { return distance(place, ball.position) < kRacked_m; });
    if (!onPlace) return false;
    ++racked;
  }
  return racked == places.size();
}

}  // namespace ferrule
