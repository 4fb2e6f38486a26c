// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/planner/ball_mask.h"
#include "core/table/track.h"

namespace ferrule {

/// Which balls may be met first.
enum class FirstContactRule {
  Own,     ///< those that the player still has to clear, then the decider
  Lowest,  ///< the lowest on the table
  Any,
};

/// What pocketing the deciding ball does.
enum class DeciderRule {
  None,     ///< there is none: points count
  Last,     ///< it wins when it is called and all own balls are gone, and loses otherwise
  AnyTime,  ///< it wins on every legal shot
  Called,   ///< it wins where it is called; else it is spotted
};

/// Where the cue ball may be put before a shot.
enum class CueBallFreedom { AsItLies, BehindString, Anywhere };

/// What a search needs to know of a game: which first contacts are legal, which pots count, what wins and what a foul
/// gives. Whoever knows a game's rules builds it; the search knows no game by name.
///
/// Simpler than a referee: no fouls in a row, no push-out, no choice of handing a shot back.
struct PlannerRules {
  FirstContactRule first = FirstContactRule::Own;
  DeciderRule deciderRule = DeciderRule::Last;
  std::optional<BallName> decider;
  bool called = true;           ///< a pot counts only in the called pocket
  bool points = false;          ///< each ball counts one, a foul costs one; else the frame is won or lost
  bool spotsWrongPots = false;  ///< balls that fell without being called come back
  bool decidesOnBreak = false;  ///< the decider on a legal break wins
  CueBallFreedom afterScratch = CueBallFreedom::Anywhere;
  CueBallFreedom afterFoul = CueBallFreedom::Anywhere;  ///< any other than a scratch
  CueBallFreedom afterBreakScratch = CueBallFreedom::Anywhere;
  int ballsToRailOnBreak = 4;
  bool weakBreakIsFoul = false;  ///< else the opponent takes the table as it lies

  bool operator==(const PlannerRules&) const = default;
};

/// A frame before a shot, as seen by who plays it.
struct Situation {
  PlannerRules rules;
  Position balls;     ///< in the order of their names; the cue ball is among them where it lies
  BallMask own;       ///< balls of the player, on the table or not; the decider is in no group
  BallMask other;     ///< of the opponent; the same as own where all clear the same balls
  bool open = false;  ///< own and other are not decided: a legal pot chooses
  bool breakShot = false;
  CueBallFreedom cueBall = CueBallFreedom::AsItLies;
  double headString_m = -0.635;
  TablePoint footSpot{0.635, 0.0};

  bool operator==(const Situation&) const = default;
};

/// The object balls on the table.
[[nodiscard]] BallMask ballsOnTable(const Situation& situation);
/// The balls that the player may meet first.
[[nodiscard]] BallMask legalFirst(const Situation& situation);
/// The balls whose pot keeps the turn or wins, whichever ball is met first.
[[nodiscard]] BallMask countingPots(const Situation& situation);
/// How many balls the player still has to pot to win, the decider included.
[[nodiscard]] int ballsToWin(const Situation& situation);
/// The same for the opponent; while the table is open, the larger group is taken for the opponent's.
[[nodiscard]] int ballsToWinOfOther(const Situation& situation);
/// The frame as the other player finds it with these balls.
[[nodiscard]] Situation passedOn(const Situation& situation, Position balls, CueBallFreedom cueBall);

}  // namespace ferrule
