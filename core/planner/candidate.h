// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/planner/frame_value.h"
#include "core/planner/situation.h"
#include "core/planner/solve_aim.h"

namespace ferrule {

/// The table that is planned on.
struct PlanningTable {
  const Simulator& simulator;
  const PocketWindows& windows;

  [[nodiscard]] double radius_m() const { return simulator.parameters().ballRadius_m; }
};

/// A plan as geometry suggests it, before speed, tip point and aim are worked out.
struct Candidate {
  Plan plan;            ///< its strike holds the first guess of the cue ball's direction and the cue's elevation
  Situation situation;  ///< with the cue ball where the plan has it, no longer in hand
  ShotWay way;          ///< for the solver; of the kinds that pot
  double slope = -1.0;  ///< see solveAim
  double way_m = 0.0;   ///< of the cue ball to its first contact
  double leastSpeed_mps = 0.5;  ///< with which the target just reaches its pocket
  double chance = 0.0;          ///< of the pot, by geometry
};

/// Every straight pot of a legal ball, the likeliest first. The cue ball must lie on the table.
[[nodiscard]] std::vector<Candidate> directCandidates(const PlanningTable& table, const Situation& situation,
                                                      const Scatter& scatter);
/// A legal ball played into another one that counts.
[[nodiscard]] std::vector<Candidate> combinationCandidates(const PlanningTable& table, const Situation& situation,
                                                           const Scatter& scatter);
/// The cue ball off a legal ball into another one that counts and lies near its pocket.
[[nodiscard]] std::vector<Candidate> caromCandidates(const PlanningTable& table, const Situation& situation,
                                                     const Scatter& scatter);
/// A legal ball off one or two cushions.
[[nodiscard]] std::vector<Candidate> bankCandidates(const PlanningTable& table, const Situation& situation,
                                                    const Scatter& scatter);

/// The situation with the cue ball here and no longer in hand.
[[nodiscard]] Situation withCueBallAt(const Situation& situation, TablePoint place);
/// Where a cue ball in hand may be put so that a legal ball has a pot, the likeliest first. For a break: places behind
/// the head string.
[[nodiscard]] std::vector<TablePoint> placements(const PlanningTable& table, const Situation& situation,
                                                 const Scatter& scatter);

/// The speed at which a level, centred strike brings this ball to its pocket with something to spare.
[[nodiscard]] double leastSpeed_mps(const PlanningTable& table, double way_m, double cut_rad, double run_m);

}  // namespace ferrule
