// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/rules/ruling.h"
#include "core/rules/shot_facts.h"

/// Inside of core/rules: one shot before the referee, and the steps that all games share.
namespace ferrule {

struct RulingCase {
  const GameState& state;  ///< with the shooter at the table
  const ShotEvents& shot;
  const ShotFacts& facts;
  Seat shooter;
  bool outOfTurn = false;

  [[nodiscard]] const HouseRules& house() const { return state.rules.house; }
  [[nodiscard]] Seat opponent() const { return otherSeat(shooter); }
  /// filmed: how sure it is when a camera saw it; what a person saw is certain.
  [[nodiscard]] Evidence evidence(RuleTopic topic, std::vector<int> events = {},
                                  Verdict filmed = Verdict::Certain) const;
};

/// Which of the fouls that depend on the kind of shot hold for it.
struct FoulScope {
  bool wrongBall = true;  ///< 6.2
  bool contact = true;    ///< some ball must be met
  bool rail = true;       ///< 6.3
};

/// Fouls by the events and by what a person called, most serious first. Source: world rules of play, section 6.
[[nodiscard]] std::vector<Foul> foulsOf(const RulingCase& matter, const FoulScope& scope);

/// A ruling in which nothing was decided but what fell and left, and the shooter is still at the table.
[[nodiscard]] Ruling openRuling(const RulingCase& matter);

/// The turn passes to a seat.
void passTo(Ruling& ruling, Seat seat, const Evidence& why);
/// The cue ball's place for the next shot.
void placeCueBall(Ruling& ruling, CueBallPlace place, const Evidence& why);
/// Ball in hand after a foul as the house has it; as it lies where the house gives none.
[[nodiscard]] CueBallPlace inHandAfterFoul(const RulingCase& matter);
void decide(Ruling& ruling, FrameResult result, const Evidence& why);
/// A ball that fell or left comes back onto the table.
void spot(Ruling& ruling, BallName ball, SpotPlace place, const Evidence& why);
/// Those that fell or left come back onto the foot spot: all, or one.
void spotDeparted(Ruling& ruling, const RulingCase& matter, std::optional<BallName> only = std::nullopt);
void ask(Ruling& ruling, const RulingCase& matter, const Doubt& doubt, RuleTopic topic);

/// The called ball and pocket, said or inferred.
struct EffectiveCall {
  std::optional<BallName> ball;
  std::optional<PocketName> pocket;
  bool safety = false;
  Verdict sureness = Verdict::Certain;
};

/// The call as it was said. Where none was, the obvious one: the only ball that fell and could be called, when it was
/// the one that was met (likely), or any other that could be (a question). Source: world rules of play, 1.6: obvious
/// shots need not be called.
[[nodiscard]] EffectiveCall effectiveCall(const RulingCase& matter);
/// The called ball in the called pocket, if it fell there.
[[nodiscard]] std::optional<Departure> calledPot(const RulingCase& matter, const EffectiveCall& call);

// One for each game.
[[nodiscard]] Ruling ruleEightBall(const RulingCase& matter);
[[nodiscard]] Ruling ruleEightBallBreak(const RulingCase& matter);
/// Nine- and ten-ball.
[[nodiscard]] Ruling ruleRotation(const RulingCase& matter);
[[nodiscard]] Ruling ruleStraightPool(const RulingCase& matter);

}  // namespace ferrule
