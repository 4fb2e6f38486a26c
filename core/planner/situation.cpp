// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/planner/situation.h"

#include <algorithm>

namespace ferrule {

namespace {

BallMask deciderOf(const Situation& s) {
  return s.rules.decider ? BallMask::of(*s.rules.decider) : BallMask();
}

int toWin(const Situation& s, BallMask group) {
  return ((group | deciderOf(s)) & ballsOnTable(s)).count();
}

}  // namespace

BallMask ballsOnTable(const Situation& s) {
  BallMask mask;
  for (const BallAt& ball : s.balls) {
    if (!ball.ball.isCueBall()) mask = mask | BallMask::of(ball.ball);
  }
  return mask;
}

BallMask legalFirst(const Situation& s) {
  const BallMask present = ballsOnTable(s);
  if (present.empty()) return {};
  if (s.rules.first == FirstContactRule::Lowest) return BallMask::of(present.lowest());
  if (s.rules.first == FirstContactRule::Any || s.breakShot) return present;
  const BallMask own = (s.open ? s.own | s.other : s.own) & present;
  return own.empty() ? deciderOf(s) & present : own;
}

BallMask countingPots(const Situation& s) {
  return s.rules.first == FirstContactRule::Own && !s.breakShot ? legalFirst(s) : ballsOnTable(s);
}

int ballsToWin(const Situation& s) {
  if (!s.open) return toWin(s, s.own);
  return std::min(toWin(s, s.own), toWin(s, s.other));
}

int ballsToWinOfOther(const Situation& s) {
  if (!s.open) return toWin(s, s.other);
  return std::max(toWin(s, s.own), toWin(s, s.other));
}

Situation passedOn(const Situation& s, Position balls, CueBallFreedom cueBall) {
  Situation next = s;
  next.balls = std::move(balls);
  if (!s.open) std::swap(next.own, next.other);
  next.breakShot = false;
  next.cueBall = cueBall;
  return next;
}

}  // namespace ferrule
