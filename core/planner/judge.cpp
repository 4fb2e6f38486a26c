// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/judge.h"

#include <algorithm>

namespace ferrule {

namespace {

struct Facts {
  std::optional<BallName> first;
  BallMask pocketed;  ///< object balls
  BallMask lost;      ///< object balls off the table
  BallMask driven;    ///< object balls to a rail after the first contact
  bool cueToRail = false;
  bool scratch = false;
  bool called = false;
};

Facts factsOf(const std::optional<PocketedBall>& call, const Simulation& played) {
  Facts facts;
  for (const ShotEvent& event : played.events) {
    const BallMask ball = BallMask::of(event.ball);
    switch (event.kind) {
      case EventKind::Ball:
        if (facts.first || !event.other) break;
        if (event.ball.isCueBall()) facts.first = *event.other;
        if (event.other->isCueBall()) facts.first = event.ball;
        break;
      case EventKind::Cushion:
        if (!facts.first) break;
        if (event.ball.isCueBall()) facts.cueToRail = true;
        if (!event.ball.isCueBall()) facts.driven = facts.driven | ball;
        break;
      case EventKind::Pocket:
      case EventKind::OffTable:
        if (event.ball.isCueBall()) {
          facts.scratch = true;
        } else if (event.kind == EventKind::Pocket) {
          facts.pocketed = facts.pocketed | ball;
          facts.called = facts.called || (call && call->ball == event.ball && call->pocket == event.pocket);
        } else {
          facts.lost = facts.lost | ball;
        }
        break;
    }
  }
  facts.driven = facts.driven | facts.pocketed | facts.lost;
  return facts;
}

Position positionAfter(const Simulation& played) {
  Position balls;
  balls.reserve(played.after.size());
  for (const FinalBall& ball : played.after) {
    if (ball.fate == BallFate::OnTable) balls.push_back({ball.ball, ball.position});
  }
  return balls;
}

/// On the long string, from the foot spot toward the foot, where no other ball is in the way.
void spot(Position& balls, BallName ball, TablePoint footSpot, double radius_m) {
  TablePoint place = footSpot;
  const auto blocked = [&] {
    return std::ranges::any_of(balls,
                               [&](const BallAt& other) { return distance(other.position, place) < 2.0 * radius_m; });
  };
  for (int step = 0; step < 40 && blocked(); ++step)
    place.x += 0.5 * radius_m;
  const auto after = std::ranges::find_if(balls, [&](const BallAt& other) { return other.ball > ball; });
  balls.insert(after, {ball, place});
}

/// A spotted ball's diameter does not depend on the shot.
constexpr double kSpottedRadius_m = 0.0286;

void spotAll(Position& balls, BallMask mask, TablePoint footSpot) {
  for (; !mask.empty(); mask = mask - BallMask::of(mask.lowest()))
    spot(balls, mask.lowest(), footSpot, kSpottedRadius_m);
}

bool isFoul(const Situation& before, const Facts& facts) {
  if (facts.scratch || !facts.first || !facts.lost.empty()) return true;
  if (!before.breakShot || before.rules.first == FirstContactRule::Lowest) {
    if (!legalFirst(before).has(*facts.first)) return true;
  }
  if (before.breakShot) return false;
  return facts.pocketed.empty() && !facts.cueToRail && facts.driven.empty();
}

Judgement afterFoul(const Situation& before, const Facts& facts, Position balls, Judgement result) {
  const PlannerRules& rules = before.rules;
  CueBallFreedom freedom = rules.afterFoul;
  if (facts.scratch) freedom = before.breakShot ? rules.afterBreakScratch : rules.afterScratch;
  result.foul = true;
  result.ending = ShotEnding::Foul;
  const BallMask gone = facts.pocketed | facts.lost;
  if (rules.points) result.points = before.breakShot ? -2 : -1;
  if (rules.spotsWrongPots) spotAll(balls, gone, before.footSpot);
  if (rules.decider && gone.has(*rules.decider) && !rules.spotsWrongPots) {
    if (rules.deciderRule == DeciderRule::Last && !before.breakShot) {
      result.ending = ShotEnding::Loss;
      return result;
    }
    spotAll(balls, BallMask::of(*rules.decider), before.footSpot);
  }
  result.next = passedOn(before, std::move(balls), freedom);
  return result;
}

Judgement afterBreak(const Situation& before, const Facts& facts, Position balls, Judgement result) {
  const PlannerRules& rules = before.rules;
  const bool decided = rules.decider && facts.pocketed.has(*rules.decider);
  if (decided && rules.decidesOnBreak) {
    result.ending = ShotEnding::Win;
    return result;
  }
  if (decided) spotAll(balls, BallMask::of(*rules.decider), before.footSpot);
  if (rules.spotsWrongPots) spotAll(balls, facts.pocketed, before.footSpot);
  const bool weak = facts.pocketed.empty() && facts.driven.count() < rules.ballsToRailOnBreak;
  if (weak && rules.weakBreakIsFoul) return afterFoul(before, facts, std::move(balls), std::move(result));
  if (facts.pocketed.empty() || rules.spotsWrongPots) {
    result.next = passedOn(before, std::move(balls), CueBallFreedom::AsItLies);
    return result;
  }
  result.ending = ShotEnding::KeepsTurn;
  result.next = before;
  result.next.balls = std::move(balls);
  result.next.breakShot = false;
  result.next.cueBall = CueBallFreedom::AsItLies;
  return result;
}

/// The deciding ball fell on a shot without a foul.
ShotEnding decided(const Situation& before, const Facts& facts, const std::optional<PocketedBall>& call) {
  const bool called = call && call->ball == *before.rules.decider && facts.called;
  switch (before.rules.deciderRule) {
    case DeciderRule::Last:
      return called && legalFirst(before) == BallMask::of(*before.rules.decider) ? ShotEnding::Win : ShotEnding::Loss;
    case DeciderRule::AnyTime:
      return ShotEnding::Win;
    case DeciderRule::Called:
      return called ? ShotEnding::Win : ShotEnding::PassesTurn;
    case DeciderRule::None:
      break;
  }
  return ShotEnding::KeepsTurn;
}

}  // namespace

Judgement judge(const Situation& before, const std::optional<PocketedBall>& call, const Simulation& played) {
  const PlannerRules& rules = before.rules;
  const Facts facts = factsOf(call, played);
  Position balls = positionAfter(played);
  Judgement result;
  result.potted = facts.called;
  result.scratch = facts.scratch;
  if (isFoul(before, facts)) return afterFoul(before, facts, std::move(balls), std::move(result));
  if (before.breakShot) return afterBreak(before, facts, std::move(balls), std::move(result));
  if (rules.decider && facts.pocketed.has(*rules.decider)) {
    result.ending = decided(before, facts, call);
    if (result.ending == ShotEnding::Win || result.ending == ShotEnding::Loss) return result;
    spotAll(balls, BallMask::of(*rules.decider), before.footSpot);
  }
  const BallMask counting = countingPots(before);
  const bool kept = rules.called ? facts.called && counting.has(call->ball) : !facts.pocketed.empty();
  if (rules.points && kept) result.points = facts.pocketed.count();
  if (rules.spotsWrongPots && !kept) spotAll(balls, facts.pocketed, before.footSpot);
  if (!kept) {
    result.next = passedOn(before, std::move(balls), CueBallFreedom::AsItLies);
    return result;
  }
  result.ending = ShotEnding::KeepsTurn;
  result.next = before;
  result.next.balls = std::move(balls);
  result.next.cueBall = CueBallFreedom::AsItLies;
  if (before.open && before.other.has(call->ball)) std::swap(result.next.own, result.next.other);
  result.next.open = false;
  return result;
}

}  // namespace ferrule
