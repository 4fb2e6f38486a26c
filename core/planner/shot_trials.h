// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/planner/candidate.h"
#include "core/planner/chances.h"
#include "core/planner/open_shot.h"

namespace ferrule {

/// How finely speeds and tip points are tried.
enum class TrialGrid { Coarse, Full };

/// A plan in work: a shot that was solved, with what its plays came to so far.
struct Entry {
  std::shared_ptr<const Candidate> candidate;  ///< nothing for shots whose aim is not solved
  ReadyShot shot;
  Scatter scatter;
  double score = 0.0;  ///< value of the faultless play, weighted with the geometric chance of the pot
  std::vector<Sample> samples;
  double correction = 0.0;
};

/// One speed and tip point of a candidate.
struct Trial {
  std::shared_ptr<const Candidate> candidate;
  double speed_mps = 0.0;
  double side = 0.0;
  double height = 0.0;
};

/// Everything that a search over one situation asks for again and again.
struct TrialContext {
  const PlanningTable& table;
  const FrameValue& value;
  const Scatter& player;
  double failed = 0.0;  ///< value of a miss that leaves everything as it lies
};

/// Candidates of a situation: all kinds when the cue ball lies, straight pots from every placement when it is in hand.
[[nodiscard]] std::vector<std::shared_ptr<const Candidate>> candidatesOf(const PlanningTable& table,
                                                                         const Situation& situation,
                                                                         const Scatter& player, std::size_t most);
/// Safeties, kicks where they are needed, or the break.
[[nodiscard]] std::vector<ReadyShot> openShotsOf(const PlanningTable& table, const Situation& situation,
                                                 const Scatter& player);
/// The grid of speeds and tip points of a candidate.
[[nodiscard]] std::vector<Trial> trialsOf(const std::shared_ptr<const Candidate>& candidate, TrialGrid grid);

/// Solves a trial's aim and plays it without fault among all balls. Nothing when it cannot be solved, does not pot its
/// ball, or is a foul. simulations: counts the plays.
[[nodiscard]] std::optional<Entry> solveTrial(const TrialContext& context, const Trial& trial);
/// The same for a shot without a pocket. evenFouls: also where the faultless play is a foul, for want of a better one.
[[nodiscard]] std::optional<Entry> tryOpenShot(const TrialContext& context, const ReadyShot& shot,
                                               bool evenFouls = false);

/// Shots like this one with a little more or less speed, height and side.
[[nodiscard]] std::vector<Entry> neighboursOf(const TrialContext& context, const Entry& entry);

/// Whether two plans are one suggestion: the same kind, ball and pocket.
[[nodiscard]] bool sameIdea(const Plan& a, const Plan& b);

}  // namespace ferrule
