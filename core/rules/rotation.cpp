// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/rules/ruling_case.h"

/// Nine-ball and ten-ball: the lowest ball first, the last ball wins. Source: world rules of play, section 2; section 9
/// as effective 2009, details from memory.
namespace ferrule {

namespace {

bool isTenBall(const RulingCase& matter) {
  return matter.state.rules.game == Game::TenBall;
}

/// The ball that wins the rack, and the only one that comes back.
BallName moneyBall(const RulingCase& matter) {
  return BallName(isTenBall(matter) ? 10 : 9);
}

void spotMoneyBall(Ruling& ruling, const RulingCase& matter) {
  spotDeparted(ruling, matter, moneyBall(matter));
}

void win(Ruling& ruling, const RulingCase& matter, const Evidence& why) {
  decide(ruling, {matter.shooter, isTenBall(matter) ? WinReason::TenPocketed : WinReason::NinePocketed}, why);
}

/// 6.14: three in a row lose the rack, but only who was told after the second.
void countFoul(Ruling& ruling, const RulingCase& matter) {
  const std::size_t seat = indexOf(matter.shooter);
  int& count = ruling.foulsInARow.at(seat);
  ++count;
  if (!matter.house().threeFoulsLose || count < 3) return;
  if (!ruling.warned.at(seat)) {
    count = 2;
    ask(ruling, matter, {DoubtKind::Warned, {}, {}}, RuleTopic::ThreeFouls);
    return;
  }
  count = 3;
  decide(ruling, {matter.opponent(), WinReason::ThreeFouls},
         matter.evidence(RuleTopic::ThreeFouls, {}, ruling.fouls.front().evidence.sureness));
}

void ruleFoul(Ruling& ruling, const RulingCase& matter) {
  const Evidence& foul = ruling.fouls.front().evidence;
  const Evidence why = matter.evidence(RuleTopic::StandardFoul, foul.events, foul.sureness);
  spotMoneyBall(ruling, matter);
  passTo(ruling, matter.opponent(), why);
  placeCueBall(ruling, inHandAfterFoul(matter), why);
  countFoul(ruling, matter);
}

void clearFouls(Ruling& ruling, const RulingCase& matter) {
  ruling.foulsInARow.at(indexOf(matter.shooter)) = 0;
  ruling.warned.at(indexOf(matter.shooter)) = false;
}

/// The opponent plays on, or makes the shooter do it.
void offerHandBack(Ruling& ruling, const RulingCase& matter, const Evidence& why) {
  const Seat opponent = matter.opponent();
  ruling.chooser = opponent;
  ruling.options = {{OptionKind::Accept, opponent, CueBallPlace::AsItLies, false},
                    {OptionKind::HandBack, matter.shooter, CueBallPlace::AsItLies, false}};
  passTo(ruling, opponent, why);
}

/// How many balls count for the three points: pocketed, or past the head string.
std::optional<int> breakPoints(const RulingCase& matter) {
  if (!matter.shot.pastHeadString) return std::nullopt;
  auto counted = *matter.shot.pastHeadString;
  for (const Departure& departure : matter.facts.pocketed)
    counted.push_back(departure.ball);
  std::ranges::sort(counted);
  const auto twice = std::ranges::unique(counted);
  return static_cast<int>(counted.size() - twice.size());
}

/// True when the break misses the three points: no foul, the opponent chooses who plays.
bool ruleThreePoints(Ruling& ruling, const RulingCase& matter) {
  if (!matter.house().threePointBreak) return false;
  const auto points = breakPoints(matter);
  if (!points) ask(ruling, matter, {DoubtKind::PastString, {}, {}}, RuleTopic::ThreePointBreak);
  if (!points || *points >= 3) return false;
  ruling.illegalBreak = true;
  ruling.pushOutAllowed = matter.house().pushOut && matter.house().pushOutAfterIllegalBreak;
  // Events differ in what becomes of it.
  if (matter.facts.fell(moneyBall(matter))) {
    spotMoneyBall(ruling, matter);
    ask(ruling, matter, {DoubtKind::NotSpelledOut, moneyBall(matter), {}}, RuleTopic::ThreePointBreak);
  }
  offerHandBack(ruling, matter,
                matter.evidence(RuleTopic::ThreePointBreak, eventsOf(matter.facts.pocketed), Verdict::Proposed));
  return true;
}

void ruleBreak(Ruling& ruling, const RulingCase& matter) {
  const ShotFacts& facts = matter.facts;
  ruling.fouls = foulsOf(matter, {.wrongBall = true, .contact = true, .rail = false});
  const bool drivenEnough = static_cast<int>(facts.drivenToRail.size()) >= matter.house().ballsToRailOnBreak;
  const bool denied =
      std::ranges::find(matter.shot.deniedFouls, FoulKind::BreakRequirement) != matter.shot.deniedFouls.end();
  if (matter.shot.struck && facts.pocketed.empty() && !drivenEnough && !denied) {
    ruling.fouls.push_back({FoulKind::BreakRequirement, std::nullopt,
                            matter.evidence(RuleTopic::BreakDriven, facts.drivenEvents, Verdict::Proposed)});
  }
  if (!ruling.fouls.empty()) return ruleFoul(ruling, matter);
  clearFouls(ruling, matter);
  if (ruleThreePoints(ruling, matter)) return;
  ruling.pushOutAllowed = matter.house().pushOut;
  if (facts.pocketed.empty()) {
    passTo(ruling, matter.opponent(), matter.evidence(RuleTopic::BreakDriven, facts.drivenEvents));
    return;
  }
  passTo(ruling, matter.shooter, matter.evidence(RuleTopic::BreakPocketed, eventsOf(facts.pocketed)));
  if (!facts.fell(moneyBall(matter))) return;
  if (isTenBall(matter)) return spotMoneyBall(ruling, matter);
  win(ruling, matter, matter.evidence(RuleTopic::Continuing, eventsOf(facts.pocketed)));
}

void rulePushOut(Ruling& ruling, const RulingCase& matter) {
  ruling.pushOut = true;
  ruling.fouls = foulsOf(matter, {.wrongBall = false, .contact = false, .rail = false});
  if (!ruling.fouls.empty()) return ruleFoul(ruling, matter);
  clearFouls(ruling, matter);
  spotMoneyBall(ruling, matter);
  offerHandBack(ruling, matter, matter.evidence(RuleTopic::PushOut));
}

/// A camera hears no announcement: a shot that breaks only what a push-out suspends may have been one.
bool mayHaveBeenPushOut(const Ruling& ruling, const RulingCase& matter) {
  if (!matter.state.pushOutAllowed || matter.shot.witness == Witness::Person) return false;
  return std::ranges::all_of(ruling.fouls, [](const Foul& foul) {
    return foul.kind == FoulKind::WrongBallFirst || foul.kind == FoulKind::NoRail || foul.kind == FoulKind::NoContact;
  });
}

void ruleLegalNineBall(Ruling& ruling, const RulingCase& matter) {
  const auto& fell = matter.facts.pocketed;
  if (fell.empty()) return passTo(ruling, matter.opponent(), matter.evidence(RuleTopic::Continuing));
  const auto nine = std::ranges::find(fell, moneyBall(matter), &Departure::ball);
  const Departure& pot = nine == fell.end() ? fell.front() : *nine;
  const Evidence why = matter.evidence(RuleTopic::Continuing, {pot.event});
  ruling.pot = {{pot.ball, *pot.pocket}, why};
  passTo(ruling, matter.shooter, why);
  if (nine != fell.end()) win(ruling, matter, why);
}

void ruleLegalTenBall(Ruling& ruling, const RulingCase& matter) {
  const auto& fell = matter.facts.pocketed;
  const EffectiveCall call = effectiveCall(matter);
  const auto pot = calledPot(matter, call);
  if (pot) {
    const bool wins = pot->ball == moneyBall(matter);
    const Evidence why = matter.evidence(RuleTopic::Continuing, {pot->event}, call.sureness);
    ruling.pot = {{pot->ball, *pot->pocket}, why};
    passTo(ruling, matter.shooter, why);
    if (call.sureness == Verdict::Ask || (wins && call.sureness != Verdict::Certain)) {
      ask(ruling, matter, {DoubtKind::CallUnknown, pot->ball, {}}, RuleTopic::CallShot);
    }
    if (wins) return win(ruling, matter, why);
    return spotMoneyBall(ruling, matter);
  }
  if (fell.empty()) return passTo(ruling, matter.opponent(), matter.evidence(RuleTopic::Continuing));
  // Another ball than the called one, another pocket, or a ball on a called safety. From memory for the safety.
  spotMoneyBall(ruling, matter);
  offerHandBack(
      ruling, matter,
      matter.evidence(RuleTopic::HandBack, eventsOf(fell), call.safety ? Verdict::Proposed : Verdict::Certain));
  // The text of 2025 is reported to forbid pocketing on a called safety; how was not seen.
  if (call.safety && matter.state.rules.edition == Edition::World2025) {
    ask(ruling, matter, {DoubtKind::NotSpelledOut, {}, {}}, RuleTopic::HandBack);
  }
}

}  // namespace

Ruling ruleRotation(const RulingCase& matter) {
  Ruling ruling = openRuling(matter);
  if (matter.state.phase == Phase::Break) {
    ruleBreak(ruling, matter);
  } else if (matter.shot.pushOut && matter.state.pushOutAllowed) {
    rulePushOut(ruling, matter);
  } else {
    ruling.fouls = foulsOf(matter, {});
    if (!ruling.fouls.empty()) {
      ruleFoul(ruling, matter);
      if (mayHaveBeenPushOut(ruling, matter))
        ask(ruling, matter, {DoubtKind::PushOutUnknown, {}, {}}, RuleTopic::PushOut);
    } else {
      clearFouls(ruling, matter);
      isTenBall(matter) ? ruleLegalTenBall(ruling, matter) : ruleLegalNineBall(ruling, matter);
    }
  }
  return ruling;
}

}  // namespace ferrule
