// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/referee.h"

#include <algorithm>

#include "core/rules/questions.h"
#include "core/rules/ruling_case.h"

namespace ferrule {

namespace {

bool isSettled(const ShotEvents& shot, DoubtKind kind) {
  return std::ranges::find(shot.settled, kind) != shot.settled.end();
}

void addSureness(Verdict& sureness, const Evidence& evidence) {
  sureness = std::max(sureness, evidence.sureness);
}

template <class Change>
void forEachEvidence(Ruling& ruling, Change&& change) {
  for (Foul& foul : ruling.fouls)
    change(foul.evidence);
  if (ruling.pot) change(ruling.pot->evidence);
  for (auto& spotting : ruling.spotted)
    change(spotting.evidence);
  if (ruling.shooterGroup) change(ruling.shooterGroup->evidence);
  change(ruling.next.evidence);
  change(ruling.cueBall.evidence);
  change(ruling.points.evidence);
  if (ruling.result) change(ruling.result->evidence);
}

/// As sure as the least sure of what follows from the shot.
Verdict surenessOf(const Ruling& ruling) {
  Verdict sureness = Verdict::Certain;
  if (!ruling.fouls.empty()) addSureness(sureness, ruling.fouls.front().evidence);
  if (ruling.pot) addSureness(sureness, ruling.pot->evidence);
  if (ruling.shooterGroup) addSureness(sureness, ruling.shooterGroup->evidence);
  addSureness(sureness, ruling.next.evidence);
  addSureness(sureness, ruling.cueBall.evidence);
  addSureness(sureness, ruling.points.evidence);
  if (ruling.result) addSureness(sureness, ruling.result->evidence);
  for (const auto& spotting : ruling.spotted)
    addSureness(sureness, spotting.evidence);
  for (const Question& question : ruling.questions)
    addSureness(sureness, question.evidence);
  return sureness;
}

/// The same state with the object balls that truly lie on the table. Balls that the game does not use stay out.
GameState withBallsSeen(const GameState& state, const Position& before) {
  GameState seen = state;
  seen.onTable = ballsOfGame(state.rules.game);
  std::erase_if(seen.onTable, [&](BallName ball) { return ballIn(before, ball) == nullptr; });
  return seen;
}

/// Before the break nobody has a group.
bool knowsGroup(const GameState& state, const ShotEvents& shot) {
  return shot.shooterGroup && state.rules.game == Game::EightBall && state.phase == Phase::Play;
}

/// With what a person knows of the player who strikes.
GameState withKnown(GameState state, const ShotEvents& shot) {
  const Seat shooter = shot.shooter.value_or(state.atTable);
  if (shot.toldOfFouls) state.warned.at(indexOf(shooter)) = true;
  if (knowsGroup(state, shot)) {
    state.groupOfFirst = shooter == Seat::First ? *shot.shooterGroup : otherGroup(*shot.shooterGroup);
    state.groupsKnown = true;
  }
  return state;
}

Ruling ruleByGame(const RulingCase& matter) {
  switch (matter.state.rules.game) {
    case Game::EightBall:
      return ruleEightBall(matter);
    case Game::NineBall:
    case Game::TenBall:
      return ruleRotation(matter);
    case Game::StraightPool:
      break;
  }
  return ruleStraightPool(matter);
}

/// Between shots: what fell is put back, a foul is punished, nothing else changes.
Ruling ruleBetweenShots(const GameState& state, const ShotEvents& shot) {
  const ShotFacts facts = shotFacts(shot);
  const ShotFacts nothing;
  const RulingCase matter{state, shot, nothing, shot.shooter.value_or(state.atTable), false};
  Ruling ruling;
  if (shot.calledFouls.empty()) {
    ruling = openRuling(matter);
    std::vector<int> events;
    for (const auto* departures : {&facts.pocketed, &facts.off}) {
      for (const Departure& departure : *departures)
        events.push_back(departure.event);
    }
    const Evidence why = matter.evidence(RuleTopic::Settling, events, Verdict::Proposed);
    ruling.next.evidence = why;
    ruling.cueBall = {state.cueBall, why};
    ruling.pushOutAllowed = state.pushOutAllowed;
  } else {
    ruling = ruleByGame(matter);
  }
  for (const auto* departures : {&facts.pocketed, &facts.off}) {
    for (const Departure& departure : *departures)
      ruling.restored.push_back(departure.ball);
  }
  if (facts.scratch) ruling.restored.push_back(kCueBall);
  if (ruling.phase != Phase::Over) ruling.phase = state.phase;
  return ruling;
}

Ruling ruleVersion(const GameState& state, const ShotEvents& shot) {
  if (!shot.struck) return ruleBetweenShots(state, shot);
  const ShotFacts facts = shotFacts(shot);
  const Seat shooter = shot.shooter.value_or(state.atTable);
  if (shooter == state.atTable) return ruleByGame({state, shot, facts, shooter, false});
  // What that player may meet and pot is judged by the player's own group.
  GameState turned = state;
  turned.atTable = shooter;
  return ruleByGame({turned, shot, facts, shooter, true});
}

/// The evidence of a version points to the events of the shot as it was read; what only the version has is left out.
void pointBack(Ruling& ruling, const ShotEvents& version, const ShotEvents& shot) {
  if (version.events.size() == shot.events.size()) return;
  std::vector<int> places;
  std::size_t next = 0;
  for (const ShotEvent& event : version.events) {
    const auto from = shot.events.begin() + static_cast<std::ptrdiff_t>(next);
    const auto found = std::find(from, shot.events.end(), event);
    places.push_back(found == shot.events.end() ? -1 : static_cast<int>(found - shot.events.begin()));
    if (found != shot.events.end()) next = static_cast<std::size_t>(places.back()) + 1;
  }
  forEachEvidence(ruling, [&](Evidence& evidence) {
    for (int& event : evidence.events)
      event = places.at(static_cast<std::size_t>(event));
    std::erase(evidence.events, -1);
  });
}

/// Takes the versions of each doubt in turn: the one without a foul holds, for want of evidence, and where they differ
/// a person is asked.
Ruling ruleWithDoubts(const GameState& state, const ShotEvents& shot) {
  auto doubts = shot.doubts;
  std::ranges::copy(doubtsOfPlaces(state, shot), std::back_inserter(doubts));
  ShotEvents holding = shot;
  std::vector<Question> questions;
  for (const Doubt& doubt : doubts) {
    if (isSettled(shot, doubt.kind)) continue;
    const auto versions = versionsOf(holding, doubt);
    std::vector<Ruling> rulings;
    for (const ShotEvents& version : versions)
      rulings.push_back(ruleVersion(state, version));
    std::size_t mildest = 0;
    bool differ = versions.size() == 1;  // a doubt without versions is a question as it is
    for (std::size_t i = 1; i < rulings.size(); ++i) {
      differ = differ || !sameConsequences(rulings[i], rulings.front());
      if (rulings[i].fouls.size() < rulings[mildest].fouls.size()) mildest = i;
    }
    if (differ) questions.push_back({doubt, {ruleNumber(state.rules, topicOf(doubt.kind)), {}, Verdict::Ask}});
    holding = versions[mildest];
  }
  Ruling ruling = ruleVersion(state, holding);
  pointBack(ruling, holding, shot);
  ruling.questions.insert(ruling.questions.begin(), questions.begin(), questions.end());
  return ruling;
}

/// The state stays as it is.
Ruling unchanged(const GameState& state) {
  Ruling ruling;
  ruling.shooter = state.atTable;
  ruling.chooser = state.atTable;
  ruling.next.value = state.atTable;
  ruling.cueBall.value = state.cueBall;
  ruling.phase = state.phase;
  ruling.onTable = state.onTable;
  ruling.pushOutAllowed = state.pushOutAllowed;
  ruling.foulsInARow = state.foulsInARow;
  ruling.warned = state.warned;
  if (state.result) ruling.result = {*state.result, {}};
  return ruling;
}

}  // namespace

Ruling rule(const GameState& state, const ShotEvents& shot) {
  if (state.phase == Phase::Over) {
    Ruling ruling = unchanged(state);
    ruling.questions.push_back({{DoubtKind::FrameOver, {}, {}}, {{}, {}, Verdict::Ask}});
    ruling.sureness = Verdict::Ask;
    return ruling;
  }
  const bool looked = !shot.before.empty();
  const GameState seen = looked ? withBallsSeen(state, shot.before) : state;
  Ruling ruling = ruleWithDoubts(withKnown(seen, shot), shot);
  if (knowsGroup(state, shot)) {
    ruling.shooterGroup = {*shot.shooterGroup, {ruleNumber(state.rules, RuleTopic::OpenTable), {}, Verdict::Certain}};
  }
  if (seen.onTable != state.onTable && !isSettled(shot, DoubtKind::BallsDiffer)) {
    ruling.questions.push_back(
        {{DoubtKind::BallsDiffer, {}, {}}, {ruleNumber(state.rules, RuleTopic::Settling), {}, Verdict::Ask}});
  }
  ruling.sureness = surenessOf(ruling);
  if (state.unsettled) ruling.sureness = std::max(ruling.sureness, Verdict::Proposed);
  return ruling;
}

Ruling rule(const GameState& state, const Announcement& announcement) {
  Ruling ruling = unchanged(state);
  if (state.phase == Phase::Over) return ruling;
  switch (announcement.kind) {
    case AnnouncementKind::Concession:
      decide(ruling, {otherSeat(announcement.seat), WinReason::Concession},
             {ruleNumber(state.rules, RuleTopic::Concession), {}, Verdict::Certain});
      break;
    case AnnouncementKind::Stalemate:
      ruling.next = {state.breaker, {ruleNumber(state.rules, RuleTopic::Stalemate), {}, Verdict::Certain}};
      ruling.cueBall.value = CueBallPlace::InHandBehindString;
      ruling.phase = Phase::Break;
      ruling.racking = Racking::Full;
      ruling.onTable = ballsOfGame(state.rules.game);
      ruling.pushOutAllowed = false;
      ruling.foulsInARow = {};
      ruling.warned = {};
      break;
    case AnnouncementKind::Warning:
      ruling.warned.at(indexOf(announcement.seat)) = true;
      break;
  }
  return ruling;
}

std::optional<Option> optionTaken(const Ruling& ruling, const Choices& choices) {
  if (ruling.options.empty()) return std::nullopt;
  const auto chosen = std::ranges::find_if(
      ruling.options, [&](const Option& option) { return choices.option && option.kind == *choices.option; });
  return chosen == ruling.options.end() ? ruling.options.front() : *chosen;
}

GameState apply(const GameState& state, const Ruling& ruling, const Choices& choices) {
  GameState next = state;
  next.phase = ruling.phase;
  next.atTable = ruling.next.value;
  next.cueBall = ruling.cueBall.value;
  next.onTable = ruling.onTable;
  next.pushOutAllowed = ruling.pushOutAllowed;
  next.foulsInARow = ruling.foulsInARow;
  next.warned = ruling.warned;
  for (std::size_t seat = 0; seat < next.points.size(); ++seat)
    next.points.at(seat) += ruling.points.value.at(seat);
  next.unsettled = state.unsettled || (ruling.sureness == Verdict::Ask && ruling.overruledBy.empty());
  next.result = ruling.result ? std::optional(ruling.result->value) : std::nullopt;
  if (ruling.shooterGroup) {
    const Group group = ruling.shooterGroup->value;
    next.groupOfFirst = ruling.shooter == Seat::First ? group : otherGroup(group);
    next.groupsKnown = true;
  }
  if (ruling.racking == Racking::Full && ruling.phase == Phase::Break) next.groupOfFirst.reset();
  if (const auto option = optionTaken(ruling, choices); option && next.phase != Phase::Over) {
    next.atTable = option->atTable;
    next.cueBall = option->cueBall;
    if (option->rack) {
      next.phase = Phase::Break;
      next.onTable = ballsOfGame(state.rules.game);
      next.pushOutAllowed = false;
      next.groupOfFirst.reset();
      next.groupsKnown = true;
    }
  }
  return next;
}

}  // namespace ferrule
