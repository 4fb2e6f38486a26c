// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/rules/rule_set.h"

namespace ferrule {

/// What a rule is about; the number under which a text has it depends on the edition and the game.
enum class RuleTopic {
  // general rules
  Spotting,  ///< where a ball is spotted
  CueBallInHand,
  CallShot,
  Settling,      ///< a ball that falls without a shot
  Interference,  ///< from outside: put back and replay
  Concession,
  // fouls
  Scratch,
  WrongBallFirst,
  NoRail,
  NoFoot,
  BallOffTable,
  TouchedBall,
  DoubleHit,
  PushShot,
  BallsMoving,
  BadPlacement,
  BadPlayFromBehind,
  CueOnTable,
  OutOfTurn,
  ThreeFouls,
  SlowPlay,
  RackTemplate,
  Unsportsmanlike,
  // definitions and regulations
  DrivenToRail,  ///< with what a frozen ball must do
  ReturnedBall,  ///< off the table and back
  SplitHit,      ///< two balls at once
  ThreePointBreak,
  // of each game
  BreakPocketed,
  BreakDriven,
  BreakEight,
  BreakEightAndScratch,
  BreakOffTable,
  BreakFoul,
  PushOut,
  OpenTable,
  Continuing,
  Called,
  StaysDown,  ///< which balls come back and which do not
  EightOnFoul,
  EightEarly,
  EightWrongPocket,
  EightOffTable,
  StandardFoul,
  SeriousFoul,
  Stalemate,
  HandBack,  ///< ten-ball: another ball than the called one fell
  Scoring,
  SpecialRacking,
  BreakingFoul,
  HouseRule,
};

/// Where a rule stands.
struct RuleNumber {
  Edition edition = Edition::World2016;  ///< whose numbering it is
  std::string section;  ///< "3.8(a)", "regulation 27"; empty where that text was not seen or it is a house rule

  bool operator==(const RuleNumber&) const = default;
};

/// Where a topic stands in the rules in force. Numbers of the edition of 2016 stand in for those of 2025, whose
/// official text was not seen, and say so by their edition; the texts before 2008 are not numbered here.
/// Source: world rules of play, 1 January 2008 and 15 March 2016, and regulations of 2016. Ten-ball is cited by its
/// section only: its sub-sections were not seen.
[[nodiscard]] RuleNumber ruleNumber(const RuleSet& rules, RuleTopic topic);

}  // namespace ferrule
