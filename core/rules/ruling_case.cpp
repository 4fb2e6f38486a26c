// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/ruling_case.h"

#include <algorithm>

namespace ferrule {

namespace {

std::vector<BallName> ballsOf(const std::vector<Departure>& departures) {
  std::vector<BallName> balls;
  for (const Departure& departure : departures)
    balls.push_back(departure.ball);
  return balls;
}

/// Which of the balls that fell the player most likely meant.
EffectiveCall obviousCall(const RulingCase& matter) {
  const auto allowed = ballsToPot(matter.state);
  std::vector<Departure> candidates;
  std::ranges::copy_if(matter.facts.pocketed, std::back_inserter(candidates), [&](const Departure& departure) {
    return std::ranges::find(allowed, departure.ball) != allowed.end();
  });
  if (candidates.empty()) return {};
  auto meant = std::ranges::find(candidates, matter.facts.firstContact, &Departure::ball);
  const bool wasMet = meant != candidates.end();
  if (!wasMet) meant = candidates.begin();
  const bool sameGroup = std::ranges::all_of(
      candidates, [&](const Departure& departure) { return groupOf(departure.ball) == groupOf(meant->ball); });
  // Whichever was meant of one group, the player goes on; in the other games each ball counts for itself.
  const bool clear = candidates.size() == 1 || (matter.state.rules.game == Game::EightBall && sameGroup);
  return {meant->ball, meant->pocket, false, wasMet && clear ? Verdict::Proposed : Verdict::Ask};
}

}  // namespace

Evidence RulingCase::evidence(RuleTopic topic, std::vector<int> events, Verdict filmed) const {
  return {ruleNumber(state.rules, topic), std::move(events),
          shot.witness == Witness::Person ? Verdict::Certain : filmed};
}

Ruling openRuling(const RulingCase& matter) {
  const auto& [state, shot, facts, shooter, outOfTurn] = matter;
  Ruling ruling;
  ruling.shooter = shooter;
  ruling.chooser = shooter;
  ruling.pocketed = ballsOf(facts.pocketed);
  ruling.off = ballsOf(facts.off);
  ruling.next = {shooter, matter.evidence(RuleTopic::Continuing)};
  ruling.cueBall = {CueBallPlace::AsItLies, matter.evidence(RuleTopic::Continuing)};
  ruling.phase = Phase::Play;
  ruling.onTable = state.onTable;
  std::erase_if(ruling.onTable, [&](BallName ball) { return facts.fell(ball) || facts.left(ball); });
  ruling.foulsInARow = state.foulsInARow;
  ruling.warned = state.warned;
  if (shot.witness == Witness::Camera) {
    for (const FoulKind kind : foulsUnseenFromAbove()) {
      const bool called = std::ranges::any_of(shot.calledFouls, [&](const CalledFoul& f) { return f.kind == kind; });
      const bool denied = std::ranges::find(shot.deniedFouls, kind) != shot.deniedFouls.end();
      if (!called && !denied) ruling.unseen.push_back(kind);
    }
  }
  return ruling;
}

void passTo(Ruling& ruling, Seat seat, const Evidence& why) {
  ruling.next = {seat, why};
}

void placeCueBall(Ruling& ruling, CueBallPlace place, const Evidence& why) {
  ruling.cueBall = {place, why};
}

CueBallPlace inHandAfterFoul(const RulingCase& matter) {
  if (matter.house().inHandOnlyAfterScratch && !matter.facts.scratch) return CueBallPlace::AsItLies;
  return matter.house().scratchAlwaysBehindString ? CueBallPlace::InHandBehindString : CueBallPlace::InHandAnywhere;
}

void decide(Ruling& ruling, FrameResult result, const Evidence& why) {
  ruling.result = {result, why};
  ruling.phase = Phase::Over;
}

void spot(Ruling& ruling, BallName ball, SpotPlace place, const Evidence& why) {
  ruling.spotted.push_back({{ball, place}, why});
  if (std::ranges::find(ruling.onTable, ball) != ruling.onTable.end()) return;
  ruling.onTable.push_back(ball);
  std::ranges::sort(ruling.onTable);
}

void spotDeparted(Ruling& ruling, const RulingCase& matter, std::optional<BallName> only) {
  for (const auto* departures : {&matter.facts.pocketed, &matter.facts.off}) {
    for (const Departure& departure : *departures) {
      if (only && departure.ball != *only) continue;
      spot(ruling, departure.ball, SpotPlace::FootSpot, matter.evidence(RuleTopic::StaysDown, {departure.event}));
    }
  }
}

void ask(Ruling& ruling, const RulingCase& matter, const Doubt& doubt, RuleTopic topic) {
  if (std::ranges::find(matter.shot.settled, doubt.kind) != matter.shot.settled.end()) return;
  if (std::ranges::any_of(ruling.questions, [&](const Question& question) { return question.doubt == doubt; })) return;
  ruling.questions.push_back({doubt, {ruleNumber(matter.state.rules, topic), {}, Verdict::Ask}});
}

EffectiveCall effectiveCall(const RulingCase& matter) {
  if (const auto& call = matter.shot.call) return {call->ball, call->pocket, call->safety, Verdict::Certain};
  return obviousCall(matter);
}

std::optional<Departure> calledPot(const RulingCase& matter, const EffectiveCall& call) {
  if (call.safety || !call.ball) return std::nullopt;
  const auto fell = std::ranges::find(matter.facts.pocketed, *call.ball, &Departure::ball);
  if (fell == matter.facts.pocketed.end()) return std::nullopt;
  // A call without a pocket, as a house may have it, holds for any.
  if (call.pocket && fell->pocket != call.pocket) return std::nullopt;
  return *fell;
}

}  // namespace ferrule
