// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/rules/referee.h"
#include "tests/bench/selfplay/chooser.h"

namespace ferrule::bench {

/// What came of one frame.
struct PlayedFrame {
  std::optional<Seat> winner;  ///< nothing: given up as endless
  Seat breaker = Seat::First;
  bool clearedFromBreak = false;   ///< the breaker won without the other playing
  bool brokeAndKept = false;       ///< the break left the breaker at the table
  std::array<int, 2> shots{};      ///< by seat
  std::array<int, 2> potsTried{};  ///< break and safeties left out
  std::array<int, 2> pots{};
  std::array<int, 2> fouls{};
  int disagreements = 0;  ///< shots on which the planner's own judgement and the referee's ruling differ
};

/// Plays one frame, shot by shot through the simulator with the scatter, and has the referee of core/rules rule every
/// shot as a person would witness it. The rack has gaps of up to 0.2 mm, as racks have (common practice, no source).
[[nodiscard]] PlayedFrame playFrame(const Planner& planner, const RuleSet& rules,
                                    const std::array<Chooser, 2>& choosers, const Scatter& scatter, Seat breaker,
                                    std::uint64_t seed);

}  // namespace ferrule::bench
