// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "core/rules/ruling_case.h"
#include "core/rules/special_racking.h"

/// Straight pool (14.1): every called ball a point, racked again without end. Source: world rules of play, section 4.
namespace ferrule {

namespace {

constexpr int kFoulPoints = 1;
constexpr int kBreakingFoulPoints = 2;
constexpr int kThirdFoulPoints = 15;
/// With the cue ball, where no called ball falls on the opening break.
constexpr std::size_t kBallsToRailOnOpening = 2;

void addPoints(Ruling& ruling, Seat seat, int points, const Evidence& why) {
  ruling.points.value.at(indexOf(seat)) += points;
  ruling.points.evidence = why;
}

CueBallPlace afterFoul(const RulingCase& matter) {
  return matter.facts.scratch ? CueBallPlace::InHandBehindString : CueBallPlace::AsItLies;
}

/// 4.3, 4.10: costs two points whatever else happened, does not count toward three, and may be repeated for ever.
void ruleBreakingFoul(Ruling& ruling, const RulingCase& matter) {
  const Seat opponent = matter.opponent();
  const Evidence why = matter.evidence(RuleTopic::BreakDriven, matter.facts.drivenEvents, Verdict::Proposed);
  ruling.fouls.insert(ruling.fouls.begin(), {FoulKind::BreakRequirement, std::nullopt, why});
  addPoints(ruling, matter.shooter, -kBreakingFoulPoints, matter.evidence(RuleTopic::BreakingFoul, why.events));
  spotDeparted(ruling, matter);
  passTo(ruling, opponent, why);
  placeCueBall(ruling, afterFoul(matter), why);
  ruling.chooser = opponent;
  ruling.options = {{OptionKind::Accept, opponent, ruling.cueBall.value, false},
                    {OptionKind::OpponentBreaks, matter.shooter, CueBallPlace::InHandBehindString, true}};
}

void ruleThirdFoul(Ruling& ruling, const RulingCase& matter) {
  const Evidence why = matter.evidence(RuleTopic::SeriousFoul, {}, ruling.fouls.front().evidence.sureness);
  addPoints(ruling, matter.shooter, -kThirdFoulPoints, why);
  ruling.foulsInARow.at(indexOf(matter.shooter)) = 0;
  ruling.warned.at(indexOf(matter.shooter)) = false;
  ruling.racking = Racking::Full;
  ruling.phase = Phase::Break;
  ruling.spotted.clear();
  ruling.onTable = ballsOfGame(Game::StraightPool);
  passTo(ruling, matter.shooter, why);
  placeCueBall(ruling, CueBallPlace::InHandBehindString, why);
}

void ruleFoul(Ruling& ruling, const RulingCase& matter) {
  const Evidence& foul = ruling.fouls.front().evidence;
  const Evidence why = matter.evidence(RuleTopic::StandardFoul, foul.events, foul.sureness);
  addPoints(ruling, matter.shooter, -kFoulPoints, why);
  spotDeparted(ruling, matter);
  passTo(ruling, matter.opponent(), why);
  placeCueBall(ruling, afterFoul(matter), why);
  int& count = ruling.foulsInARow.at(indexOf(matter.shooter));
  ++count;
  if (!matter.house().threeFoulsLose || count < 3) return;
  if (ruling.warned.at(indexOf(matter.shooter))) return ruleThirdFoul(ruling, matter);
  count = 2;
  ask(ruling, matter, {DoubtKind::Warned, {}, {}}, RuleTopic::ThreeFouls);
}

/// 4.4, 4.8: one ball left, or none.
void rackAgain(Ruling& ruling, const RulingCase& matter) {
  if (ruling.onTable.size() > 1) return;
  ruling.racking = ruling.onTable.empty() ? Racking::Full : Racking::Rest;
  if (ruling.racking == Racking::Rest) {
    const BallName last = ruling.onTable.front();
    const auto& after = matter.shot.after;
    const BallAt* fifteenth = ballIn(after, last);
    const BallAt* cue = ballIn(after, kCueBall);
    if (fifteenth != nullptr && cue != nullptr) {
      const Evidence why = matter.evidence(RuleTopic::SpecialRacking, {}, Verdict::Proposed);
      const SpecialRacking special = specialRacking(matter.state.lines, fifteenth->position, cue->position);
      if (special.fifteenth) ruling.spotted.push_back({{last, *special.fifteenth}, why});
      if (special.cueBall != CueBallPlace::AsItLies) placeCueBall(ruling, special.cueBall, why);
    }
  }
  ruling.onTable = ballsOfGame(Game::StraightPool);
}

void ruleLegalShot(Ruling& ruling, const RulingCase& matter, const EffectiveCall& call) {
  ruling.foulsInARow.at(indexOf(matter.shooter)) = 0;
  ruling.warned.at(indexOf(matter.shooter)) = false;
  const auto pot = calledPot(matter, call);
  if (!pot) {
    spotDeparted(ruling, matter);
    passTo(ruling, matter.opponent(), matter.evidence(RuleTopic::Continuing));
    return;
  }
  const Evidence why = matter.evidence(RuleTopic::Continuing, {pot->event}, call.sureness);
  ruling.pot = {{pot->ball, *pot->pocket}, why};
  passTo(ruling, matter.shooter, why);
  if (call.sureness == Verdict::Ask) {
    ask(ruling, matter, {DoubtKind::CallUnknown, pot->ball, {}}, RuleTopic::CallShot);
  }
  std::vector<int> events;
  for (const Departure& departure : matter.facts.pocketed)
    events.push_back(departure.event);
  const int scored = static_cast<int>(events.size());
  addPoints(ruling, matter.shooter, scored, matter.evidence(RuleTopic::Scoring, events, call.sureness));
  const int total = matter.state.points.at(indexOf(matter.shooter)) + scored;
  if (matter.state.rules.pointsToWin > 0 && total >= matter.state.rules.pointsToWin) {
    decide(ruling, {matter.shooter, WinReason::PointsReached}, ruling.points.evidence);
    return;
  }
  rackAgain(ruling, matter);
}

}  // namespace

Ruling ruleStraightPool(const RulingCase& matter) {
  Ruling ruling = openRuling(matter);
  const bool opening = matter.state.phase == Phase::Break && matter.shot.struck;
  const ShotFacts& facts = matter.facts;
  ruling.fouls = foulsOf(matter, {.wrongBall = true, .contact = true, .rail = !opening});
  const EffectiveCall call = effectiveCall(matter);
  const bool driven = facts.cueBallToRail && facts.drivenToRail.size() >= kBallsToRailOnOpening;
  const bool denied =
      std::ranges::find(matter.shot.deniedFouls, FoulKind::BreakRequirement) != matter.shot.deniedFouls.end();
  if (opening && !calledPot(matter, call) && !driven && !denied) {
    ruleBreakingFoul(ruling, matter);
  } else if (!ruling.fouls.empty()) {
    ruleFoul(ruling, matter);
  } else {
    ruleLegalShot(ruling, matter, call);
  }
  return ruling;
}

}  // namespace ferrule
