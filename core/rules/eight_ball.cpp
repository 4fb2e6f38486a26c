// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/rules/ruling_case.h"

namespace ferrule {

namespace {

const BallName kEight{8};

/// The texts before 2008: on an open table the 8 met first is no foul, but no group ball scores. From memory.
bool eightFirstIsHarmless(const RulingCase& matter) {
  return matter.state.rules.edition == Edition::Before2008 && !matter.state.groupOfFirst &&
         matter.facts.firstContact == kEight;
}

bool isCalled(const RulingCase& matter, bool onEight) {
  const CallRule calls = matter.house().calls;
  return calls == CallRule::Every || (calls == CallRule::EightOnly && onEight);
}

/// Where nothing is called, any ball that may be potted counts; the first that fell stands for them.
EffectiveCall callInForce(const RulingCase& matter, bool onEight) {
  EffectiveCall call = effectiveCall(matter);
  if (isCalled(matter, onEight)) return call;
  if (call.safety) return call;
  const auto allowed = ballsToPot(matter.state);
  const auto fell = std::ranges::find_if(matter.facts.pocketed, [&](const Departure& departure) {
    return std::ranges::find(allowed, departure.ball) != allowed.end();
  });
  if (fell == matter.facts.pocketed.end()) return {};
  return {fell->ball, fell->pocket, false, Verdict::Certain};
}

/// On an open table without calls, balls of both groups that fell leave the choice to a person.
bool bothGroupsFell(const RulingCase& matter) {
  const auto& fell = matter.facts.pocketed;
  const auto of = [&](Group group) {
    return std::ranges::any_of(fell, [&](const Departure& departure) { return groupOf(departure.ball) == group; });
  };
  return of(Group::Solids) && of(Group::Stripes);
}

void lose(Ruling& ruling, const RulingCase& matter, WinReason why, RuleTopic topic, int event, Verdict sureness) {
  decide(ruling, {matter.opponent(), why}, matter.evidence(topic, {event}, sureness));
  passTo(ruling, matter.opponent(), ruling.result->evidence);
}

int eventOf(const std::vector<Departure>& departures, BallName ball) {
  return std::ranges::find(departures, ball, &Departure::ball)->event;
}

/// 3.8: what loses a rack, and the 8 that wins it. True when the rack is over.
bool ruleOnEight(Ruling& ruling, const RulingCase& matter, const EffectiveCall& call, bool onEight) {
  const auto& facts = matter.facts;
  if (facts.left(kEight)) {
    lose(ruling, matter, WinReason::EightOffTable, RuleTopic::EightOffTable, eventOf(facts.off, kEight),
         Verdict::Proposed);
    return true;
  }
  if (!facts.fell(kEight)) {
    if (!facts.scratch || !onEight || !matter.house().scratchOnEightLoses) return false;
    lose(ruling, matter, WinReason::ScratchOnEight, RuleTopic::HouseRule, facts.scratch->event, Verdict::Certain);
    return true;
  }
  const int event = eventOf(facts.pocketed, kEight);
  if (!matter.state.groupsKnown) {
    ask(ruling, matter, {DoubtKind::GroupsUnknown, kEight, std::nullopt}, RuleTopic::OpenTable);
  }
  // Where nobody knows the groups, a fair 8 is taken for the winning one until a person says otherwise.
  const bool mayFall = onEight || !matter.state.groupsKnown;
  if (!mayFall) {
    // 3.8(b) says it more exactly where both hold, but a foul with the 8 down is loss whatever the groups.
    const bool fouled = !ruling.fouls.empty();
    lose(ruling, matter, fouled ? WinReason::EightOnFoul : WinReason::EightEarly,
         fouled ? RuleTopic::EightOnFoul : RuleTopic::EightEarly, event, Verdict::Certain);
    return true;
  }
  if (!ruling.fouls.empty()) {
    lose(ruling, matter, WinReason::EightOnFoul, RuleTopic::EightOnFoul, event, ruling.fouls.front().evidence.sureness);
    return true;
  }
  const auto pot = calledPot(matter, call);
  if (!pot || pot->ball != kEight) {
    lose(ruling, matter, WinReason::EightWrongPocket, RuleTopic::EightWrongPocket, event, Verdict::Certain);
    return true;
  }
  if (call.sureness != Verdict::Certain) {
    ask(ruling, matter, {DoubtKind::CallUnknown, kEight, std::nullopt}, RuleTopic::CallShot);
  }
  ruling.pot = {{pot->ball, *pot->pocket}, matter.evidence(RuleTopic::Called, {pot->event}, call.sureness)};
  decide(ruling, {matter.shooter, WinReason::EightPocketed}, matter.evidence(RuleTopic::Continuing, {pot->event}));
  return true;
}

void ruleLegalShot(Ruling& ruling, const RulingCase& matter, const EffectiveCall& call, bool onEight) {
  const auto pot = eightFirstIsHarmless(matter) ? std::nullopt : calledPot(matter, call);
  const auto allowed = ballsToPot(matter.state);
  if (!pot || std::ranges::find(allowed, pot->ball) == allowed.end()) {
    passTo(ruling, matter.opponent(), matter.evidence(call.safety ? RuleTopic::Called : RuleTopic::Continuing));
    return;
  }
  const Evidence why = matter.evidence(RuleTopic::Continuing, {pot->event}, call.sureness);
  ruling.pot = {{pot->ball, *pot->pocket}, why};
  passTo(ruling, matter.shooter, why);
  if (call.sureness == Verdict::Ask) {
    ask(ruling, matter, {DoubtKind::CallUnknown, pot->ball, std::nullopt}, RuleTopic::CallShot);
  }
  if (matter.state.groupOfFirst || !groupOf(pot->ball)) return;
  ruling.shooterGroup = {*groupOf(pot->ball), matter.evidence(RuleTopic::OpenTable, {pot->event}, call.sureness)};
  if (!isCalled(matter, onEight) && bothGroupsFell(matter)) {
    ask(ruling, matter, {DoubtKind::CallUnknown, pot->ball, std::nullopt}, RuleTopic::OpenTable);
  }
}

/// The texts before 2025 do not say how to go on when a group is gone before anyone had it; that of 2025 was not seen.
bool groupGoneUnclaimed(const GameState& state) {
  if (state.groupOfFirst || !state.groupsKnown) return false;
  const auto none = [&](Group group) {
    return std::ranges::none_of(state.onTable, [&](BallName ball) { return groupOf(ball) == group; });
  };
  return none(Group::Solids) || none(Group::Stripes);
}

}  // namespace

Ruling ruleEightBall(const RulingCase& matter) {
  if (matter.state.phase == Phase::Break) return ruleEightBallBreak(matter);
  Ruling ruling = openRuling(matter);
  const bool onEight = isOnEight(matter.state, matter.shooter);
  FoulScope scope;
  scope.wrongBall = !eightFirstIsHarmless(matter);
  ruling.fouls = foulsOf(matter, scope);
  if (!matter.state.groupsKnown) {
    ask(ruling, matter, {DoubtKind::GroupsUnknown, matter.facts.firstContact, std::nullopt}, RuleTopic::OpenTable);
  }
  if (groupGoneUnclaimed(matter.state)) ask(ruling, matter, {DoubtKind::NotSpelledOut, {}, {}}, RuleTopic::OpenTable);

  const EffectiveCall call = callInForce(matter, onEight);
  if (ruleOnEight(ruling, matter, call, onEight)) return ruling;
  if (ruling.fouls.empty()) {
    ruleLegalShot(ruling, matter, call, onEight);
    return ruling;
  }
  const Evidence& foul = ruling.fouls.front().evidence;
  const Evidence why = matter.evidence(RuleTopic::StandardFoul, foul.events, foul.sureness);
  passTo(ruling, matter.opponent(), why);
  placeCueBall(ruling, inHandAfterFoul(matter), why);
  return ruling;
}

}  // namespace ferrule
