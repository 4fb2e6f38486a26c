// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <vector>

#include "core/rules/ruling.h"
#include "core/rules/testimony.h"

/// What a person can answer to what a referee asks.
namespace ferrule {

enum class AnswerKind {
  Yes,
  No,
  Ball,        ///< ball it was
  LeftTable,   ///< ball left the table
  OnTable,     ///< ball lies on the table
  InPocket,    ///< ball fell into pocket
  SafetyCall,  ///< a safety was called
  Group,       ///< the shooter has group
  Count,       ///< number
  CountUp,     ///< number or more
  AsRead,      ///< the shot and its ruling stand as they are
};

struct DoubtAnswer {
  AnswerKind kind = AnswerKind::Yes;
  BallName ball{};
  PocketName pocket = PocketName::HeadLeft;
  Group group = Group::Solids;
  int number = 0;
  Testimony says;  ///< what the referee is told

  bool operator==(const DoubtAnswer&) const = default;
};

/// The answers to a doubt, the likeliest first where one is; none where the shot itself must be corrected.
/// events: of the shot that was ruled.
[[nodiscard]] std::vector<DoubtAnswer> answersTo(const Doubt& doubt, std::span<const ShotEvent> events);

}  // namespace ferrule
