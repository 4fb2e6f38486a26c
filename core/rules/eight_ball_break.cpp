// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/rules/ruling_case.h"

/// The opening shot of eight-ball. Source: world rules of play, 3.3; what it does not spell out is asked.
namespace ferrule {

namespace {

const BallName kEight{8};

void offer(Ruling& ruling, Seat chooser, std::vector<Option> options, const Evidence& why) {
  ruling.chooser = chooser;
  passTo(ruling, options.front().atTable, why);
  placeCueBall(ruling, options.front().cueBall, why);
  ruling.options = std::move(options);
}

Option accept(Seat seat) {
  return {OptionKind::Accept, seat, CueBallPlace::AsItLies, false};
}
Option takeInHand(Seat seat, CueBallPlace place) {
  return {OptionKind::TakeInHand, seat, place, false};
}
Option rackAgain(Seat seat) {
  return {OptionKind::RackAgain, seat, CueBallPlace::InHandBehindString, true};
}
Option opponentBreaks(Seat breaker) {
  return {OptionKind::OpponentBreaks, breaker, CueBallPlace::InHandBehindString, true};
}

bool cueBallIsGone(const RulingCase& matter) {
  return matter.facts.scratch.has_value();
}

std::optional<int> eightEvent(const ShotFacts& facts) {
  for (const auto* departures : {&facts.pocketed, &facts.off}) {
    const auto found = std::ranges::find(*departures, kEight, &Departure::ball);
    if (found != departures->end()) return found->event;
  }
  return std::nullopt;
}

/// 3.3(e) and (f), or what the house makes of them.
void ruleEightDown(Ruling& ruling, const RulingCase& matter) {
  const int event = *eightEvent(matter.facts);
  const Seat opponent = matter.opponent();
  if (cueBallIsGone(matter)) {
    const std::vector<int> events{event, matter.facts.scratch->event};
    if (matter.house().eightAndScratchOnBreakLoses) {
      decide(ruling, {opponent, WinReason::EightAndScratchOnBreak}, matter.evidence(RuleTopic::HouseRule, events));
      passTo(ruling, opponent, ruling.result->evidence);
      return;
    }
    const Evidence why = matter.evidence(RuleTopic::BreakEightAndScratch, events);
    spot(ruling, kEight, SpotPlace::FootSpot, why);
    offer(ruling, opponent,
          {{OptionKind::SpotAndPlay, opponent, CueBallPlace::InHandBehindString, false}, rackAgain(opponent)}, why);
    // 3.3(f) speaks of a scratch; the cue ball off the table with the 8 down is not spelled out.
    if (!matter.facts.scratch->pocket) {
      ask(ruling, matter, {DoubtKind::NotSpelledOut, kCueBall, std::nullopt}, RuleTopic::BreakEightAndScratch);
    }
    return;
  }
  if (matter.house().eightOnBreakWins) {
    decide(ruling, {matter.shooter, WinReason::EightOnBreak}, matter.evidence(RuleTopic::HouseRule, {event}));
    return;
  }
  const Evidence why = matter.evidence(RuleTopic::BreakEight, {event});
  spot(ruling, kEight, SpotPlace::FootSpot, why);
  offer(ruling, matter.shooter,
        {{OptionKind::SpotAndPlay, matter.shooter, CueBallPlace::AsItLies, false}, rackAgain(matter.shooter)}, why);
}

/// 3.3(g) and (h), with the choices of 3.3(d) where too few balls were driven as well.
void ruleFoul(Ruling& ruling, const RulingCase& matter, bool tooWeak) {
  const Seat opponent = matter.opponent();
  const Evidence& foul = ruling.fouls.front().evidence;
  const bool offTable = !matter.facts.off.empty();
  const Evidence why =
      matter.evidence(offTable ? RuleTopic::BreakOffTable : RuleTopic::BreakFoul, foul.events, foul.sureness);
  if (const auto event = eightEvent(matter.facts)) {
    spot(ruling, kEight, SpotPlace::FootSpot, matter.evidence(RuleTopic::StaysDown, {*event}));
  }
  const CueBallPlace inHand = matter.house().breakScratchBehindString || matter.house().scratchAlwaysBehindString
                                  ? CueBallPlace::InHandBehindString
                                  : CueBallPlace::InHandAnywhere;
  std::vector<Option> options;
  if (!cueBallIsGone(matter)) options.push_back(accept(opponent));
  options.push_back(takeInHand(opponent, inHand));
  if (tooWeak) {
    options.push_back(rackAgain(opponent));
    options.push_back(opponentBreaks(matter.shooter));
    ruling.illegalBreak = true;
    ask(ruling, matter, {DoubtKind::NotSpelledOut, {}, {}}, RuleTopic::BreakFoul);
  }
  offer(ruling, opponent, options, why);
  if (options.size() == 1) {
    ruling.options.clear();
    ruling.chooser = opponent;
  }
}

}  // namespace

Ruling ruleEightBallBreak(const RulingCase& matter) {
  Ruling ruling = openRuling(matter);
  // Any ball may be met first; a rack that is not hit at all is a foul. From memory.
  ruling.fouls = foulsOf(matter, {.wrongBall = false, .contact = true, .rail = false});
  const ShotFacts& facts = matter.facts;
  const bool tooWeak = facts.pocketed.empty() && facts.firstContact &&
                       static_cast<int>(facts.drivenToRail.size()) < matter.house().ballsToRailOnBreak;
  const bool onlyScratch = std::ranges::all_of(ruling.fouls, [](const Foul& f) { return f.kind == FoulKind::Scratch; });
  if (facts.fell(kEight) && onlyScratch) {
    ruleEightDown(ruling, matter);
  } else if (!ruling.fouls.empty()) {
    ruleFoul(ruling, matter, tooWeak);
  } else if (tooWeak) {
    const Seat opponent = matter.opponent();
    ruling.illegalBreak = true;
    offer(ruling, opponent, {accept(opponent), rackAgain(opponent), opponentBreaks(matter.shooter)},
          matter.evidence(RuleTopic::BreakDriven, facts.drivenEvents, Verdict::Proposed));
  } else if (!facts.pocketed.empty()) {
    passTo(ruling, matter.shooter, matter.evidence(RuleTopic::BreakPocketed, eventsOf(facts.pocketed)));
  } else {
    const bool barely = static_cast<int>(facts.drivenToRail.size()) == matter.house().ballsToRailOnBreak;
    passTo(ruling, matter.opponent(),
           matter.evidence(RuleTopic::BreakDriven, facts.drivenEvents, barely ? Verdict::Proposed : Verdict::Certain));
  }
  return ruling;
}

}  // namespace ferrule
