// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/rules/ruling_case.h"

namespace ferrule {

namespace {

RuleTopic topicOf(FoulKind kind) {
  switch (kind) {
    case FoulKind::Scratch:
      return RuleTopic::Scratch;
    case FoulKind::WrongBallFirst:
      return RuleTopic::WrongBallFirst;
    case FoulKind::NoContact:
    case FoulKind::NoRail:
      return RuleTopic::NoRail;
    case FoulKind::NoFoot:
      return RuleTopic::NoFoot;
    case FoulKind::BallOffTable:
      return RuleTopic::BallOffTable;
    case FoulKind::TouchedBall:
      return RuleTopic::TouchedBall;
    case FoulKind::DoubleHit:
      return RuleTopic::DoubleHit;
    case FoulKind::PushShot:
      return RuleTopic::PushShot;
    case FoulKind::BallsMoving:
      return RuleTopic::BallsMoving;
    case FoulKind::BadPlacement:
      return RuleTopic::BadPlacement;
    case FoulKind::BadPlayFromBehind:
      return RuleTopic::BadPlayFromBehind;
    case FoulKind::CueOnTable:
      return RuleTopic::CueOnTable;
    case FoulKind::OutOfTurn:
      return RuleTopic::OutOfTurn;
    case FoulKind::SlowPlay:
      return RuleTopic::SlowPlay;
    case FoulKind::RackTemplate:
      return RuleTopic::RackTemplate;
    case FoulKind::Unsportsmanlike:
      return RuleTopic::Unsportsmanlike;
    case FoulKind::BreakRequirement:
      return RuleTopic::BreakDriven;
  }
  return RuleTopic::StandardFoul;
}

/// Conduct that a referee may punish harder comes first, then what gives the cue ball away, then the rest.
/// Source: world rules of play, section 6; the order within standard fouls: common practice, no source.
int gravity(FoulKind kind) {
  if (kind == FoulKind::Unsportsmanlike) return 0;
  if (kind == FoulKind::Scratch) return 1;
  return kind == FoulKind::BallOffTable ? 2 : 3;
}

bool behindString(const GameState& state, TablePoint place) {
  return place.x < state.lines.headString_m;
}

/// 6.11: from behind the string, the first ball met lies on or past it or the cue ball crossed it before.
bool playedBadlyFromBehind(const RulingCase& matter) {
  const auto& [state, shot, facts, shooter, outOfTurn] = matter;
  if (state.cueBall != CueBallPlace::InHandBehindString || !facts.firstContact) return false;
  const BallAt* target = ballIn(shot.before, *facts.firstContact);
  if (target == nullptr || !behindString(state, target->position)) return false;
  const int contact = facts.contactEvents.empty() ? 0 : facts.contactEvents.front();
  for (int i = 0; i <= contact && i < static_cast<int>(shot.events.size()); ++i) {
    const ShotEvent& event = shot.events[static_cast<std::size_t>(i)];
    if (event.ball.isCueBall() && !behindString(state, event.position)) return false;
  }
  return true;
}

/// 6.10: a ball in hand behind the string was put on it or past it.
bool placedBadly(const RulingCase& matter) {
  if (matter.state.cueBall != CueBallPlace::InHandBehindString) return false;
  const BallAt* cue = ballIn(matter.shot.before, kCueBall);
  return cue != nullptr && !behindString(matter.state, cue->position);
}

class FoulList {
 public:
  explicit FoulList(const RulingCase& matter) : matter_(matter) {}

  void add(FoulKind kind, std::optional<BallName> ball, std::vector<int> events, Verdict filmed) {
    if (std::ranges::find(matter_.shot.deniedFouls, kind) != matter_.shot.deniedFouls.end()) return;
    if (std::ranges::any_of(fouls_, [&](const Foul& foul) { return foul.kind == kind && foul.ball == ball; })) return;
    fouls_.push_back({kind, ball, matter_.evidence(topicOf(kind), std::move(events), filmed)});
  }
  void addCalled(const CalledFoul& called) {
    const bool objectBall = called.ball && !called.ball->isCueBall();
    if (called.kind == FoulKind::TouchedBall && objectBall && matter_.house().cueBallFoulsOnly) return;
    add(called.kind, called.ball, {}, Verdict::Certain);
  }
  [[nodiscard]] std::vector<Foul> take() {
    std::ranges::stable_sort(fouls_, {}, [](const Foul& foul) { return gravity(foul.kind); });
    return std::move(fouls_);
  }

 private:
  const RulingCase& matter_;
  std::vector<Foul> fouls_;
};

}  // namespace

std::vector<Foul> foulsOf(const RulingCase& matter, const FoulScope& scope) {
  const auto& [state, shot, facts, shooter, outOfTurn] = matter;
  FoulList fouls(matter);
  if (!shot.struck) {
    for (const CalledFoul& called : shot.calledFouls)
      fouls.addCalled(called);
    return fouls.take();
  }
  if (facts.scratch) fouls.add(FoulKind::Scratch, kCueBall, {facts.scratch->event}, Verdict::Certain);
  for (const Departure& departure : facts.off)
    fouls.add(FoulKind::BallOffTable, departure.ball, {departure.event}, Verdict::Proposed);
  if (!facts.firstContact) {
    if (scope.contact) fouls.add(FoulKind::NoContact, std::nullopt, {}, Verdict::Proposed);
  } else {
    const auto allowed = ballsAllowedFirst(state);
    if (scope.wrongBall && std::ranges::find(allowed, *facts.firstContact) == allowed.end()) {
      fouls.add(FoulKind::WrongBallFirst, facts.firstContact, facts.contactEvents, Verdict::Certain);
    }
    if (scope.rail && facts.pocketed.empty() && facts.railEvents.empty() && !facts.scratch) {
      fouls.add(FoulKind::NoRail, std::nullopt, facts.contactEvents, Verdict::Proposed);
    }
    if (playedBadlyFromBehind(matter)) {
      fouls.add(FoulKind::BadPlayFromBehind, facts.firstContact, facts.contactEvents, Verdict::Certain);
    }
  }
  if (placedBadly(matter)) fouls.add(FoulKind::BadPlacement, kCueBall, {}, Verdict::Proposed);
  if (outOfTurn) fouls.add(FoulKind::OutOfTurn, std::nullopt, {}, Verdict::Proposed);
  for (const CalledFoul& called : shot.calledFouls)
    fouls.addCalled(called);
  return fouls.take();
}

}  // namespace ferrule
