// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rules/rule_number.h"

#include <array>

#include "core/base/contract.h"

namespace ferrule {

namespace {

/// One topic in the world rules of 2016, by game in the order of kGames. Sub-sections marked [M] are from memory.
struct Row {
  RuleTopic topic;
  std::array<std::string_view, 4> sections;
};

constexpr Row general(RuleTopic topic, std::string_view section) {
  return {topic, {section, section, section, section}};
}

// Numbers that a game has no use for point to the section of the game.
constexpr std::array kRows{
    general(RuleTopic::Spotting, "1.4"),
    general(RuleTopic::CueBallInHand, "1.5"),
    general(RuleTopic::CallShot, "1.6"),
    general(RuleTopic::Settling, "1.7"),
    general(RuleTopic::Interference, "1.9"),
    general(RuleTopic::Concession, "1.11"),
    general(RuleTopic::Scratch, "6.1"),
    general(RuleTopic::WrongBallFirst, "6.2"),
    general(RuleTopic::NoRail, "6.3"),
    general(RuleTopic::NoFoot, "6.4"),
    general(RuleTopic::BallOffTable, "6.5"),
    general(RuleTopic::TouchedBall, "6.6"),
    general(RuleTopic::DoubleHit, "6.7"),
    general(RuleTopic::PushShot, "6.8"),     // [M]
    general(RuleTopic::BallsMoving, "6.9"),  // [M]
    general(RuleTopic::BadPlacement, "6.10"),
    general(RuleTopic::BadPlayFromBehind, "6.11"),
    general(RuleTopic::CueOnTable, "6.12"),  // [M]
    general(RuleTopic::OutOfTurn, "6.13"),   // [M]
    general(RuleTopic::ThreeFouls, "6.14"),
    general(RuleTopic::SlowPlay, "6.15"),
    general(RuleTopic::RackTemplate, "6.16"),
    general(RuleTopic::Unsportsmanlike, "6.17"),
    general(RuleTopic::DrivenToRail, "8.4"),
    general(RuleTopic::ReturnedBall, "8.5"),
    general(RuleTopic::SplitHit, "regulation 27"),
    general(RuleTopic::ThreePointBreak, "regulation of the event"),
    Row{RuleTopic::BreakPocketed, {"3.3(c)", "2.3", "9", "4.3"}},
    Row{RuleTopic::BreakDriven, {"3.3(d)", "2.3(b)", "9", "4.3"}},
    Row{RuleTopic::BreakEight, {"3.3(e)", "3", "3", "3"}},
    Row{RuleTopic::BreakEightAndScratch, {"3.3(f)", "3", "3", "3"}},
    Row{RuleTopic::BreakOffTable, {"3.3(g)", "6.5", "6.5", "6.5"}},
    Row{RuleTopic::BreakFoul, {"3.3(h)", "2.7", "9", "4.9"}},
    Row{RuleTopic::PushOut, {"2.4", "2.4", "9", "2.4"}},
    Row{RuleTopic::OpenTable, {"3.4", "3.4", "3.4", "3.4"}},
    Row{RuleTopic::Continuing, {"3.5", "2.5", "9", "4.4"}},
    Row{RuleTopic::Called, {"3.6", "1.6", "9", "4.5"}},  // [M]
    Row{RuleTopic::StaysDown, {"3.7", "2.6", "9", "4.6"}},
    Row{RuleTopic::EightOnFoul, {"3.8(a)", "3.8", "3.8", "3.8"}},
    Row{RuleTopic::EightEarly, {"3.8(b)", "3.8", "3.8", "3.8"}},
    Row{RuleTopic::EightWrongPocket, {"3.8(c)", "3.8", "3.8", "3.8"}},
    Row{RuleTopic::EightOffTable, {"3.8(d)", "3.8", "3.8", "3.8"}},
    Row{RuleTopic::StandardFoul, {"3.9", "2.7", "9", "4.9"}},   // [M]
    Row{RuleTopic::SeriousFoul, {"3.10", "2.8", "9", "4.11"}},  // 3.10 [M]
    Row{RuleTopic::Stalemate, {"3.11", "2.9", "9", "1.12"}},    // 2.9 [M]
    Row{RuleTopic::HandBack, {"9", "9", "9", "9"}},
    Row{RuleTopic::Scoring, {"4.7", "4.7", "4.7", "4.7"}},         // [M]
    Row{RuleTopic::SpecialRacking, {"4.8", "4.8", "4.8", "4.8"}},  // [M]
    Row{RuleTopic::BreakingFoul, {"4.10", "4.10", "4.10", "4.10"}},
    general(RuleTopic::HouseRule, ""),
};

}  // namespace

RuleNumber ruleNumber(const RuleSet& rules, RuleTopic topic) {
  if (rules.edition == Edition::Before2008) return {Edition::Before2008, ""};
  const Edition numbering = rules.edition == Edition::World2008 ? Edition::World2008 : Edition::World2016;
  // The foul of touching a rack template came in before it. From memory.
  if (numbering == Edition::World2008 && topic == RuleTopic::Unsportsmanlike) return {numbering, "6.16"};
  if (numbering == Edition::World2008 && topic == RuleTopic::RackTemplate) return {numbering, ""};
  for (const Row& row : kRows) {
    if (row.topic == topic) return {numbering, std::string(row.sections.at(static_cast<std::size_t>(rules.game)))};
  }
  FERRULE_REQUIRE(!"every topic has its row");
  return {};
}

}  // namespace ferrule
