// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>

#include "core/planner/planner.h"
#include "core/planner/shot_trials.h"

namespace ferrule {

/// One search over one situation: solve many trials, play the promising ones, play fewer of them more often, refine,
/// look one shot farther. After each stage the best so far stands.
class Search {
 public:
  Search(const PlanningTable& table, const Situation& situation, const std::array<Scatter, 2>& players,
         const SearchBudget& budget, const std::function<void(const Suggestion&)>& onBetter);

  [[nodiscard]] Suggestion run();

 private:
  void tryAll();
  /// Plays ever fewer entries ever more often. False when the budget does not reach.
  bool narrow(std::size_t width);
  void thin(std::size_t most, std::size_t mostOfIdea);
  /// Brings the first entries to this many samples. False when the budget does not reach.
  bool sampleUpTo(std::size_t entries, std::size_t samples);
  void rankByValue();
  void refine(std::size_t ideas);
  void lookDeeper(std::size_t ideas);
  /// Plays the best of each idea again with errors that had no part in choosing it: whatever was chosen because it came
  /// out well looks better than it is. Simulations are kept back for it, and a limit in time does not leave it out.
  void playAfresh();
  [[nodiscard]] bool goesOn(long cost);
  [[nodiscard]] bool isClear() const;
  [[nodiscard]] std::vector<std::size_t> bestOfIdeas(std::size_t most) const;
  [[nodiscard]] double meanValue(const Entry& entry) const;
  void publish();
  [[nodiscard]] double deeperValue(const Situation& next) const;
  [[nodiscard]] Suggestion listed() const;

  const PlanningTable& table_;
  const Situation& situation_;
  std::array<Scatter, 2> players_;
  const SearchBudget& budget_;
  const std::function<void(const Suggestion&)>& onBetter_;
  FrameValue value_;
  TrialContext context_;
  std::vector<Deviates> deviates_;
  std::vector<Entry> entries_;
  long keptBack_ = 0;  ///< simulations for playing afresh
  long simulations_ = 0;
  bool sampled_ = false;  ///< before the first plays there is no list worth stopping for
  SearchEnd end_ = SearchEnd::Settled;
  double directChance_ = 0.0;
  std::chrono::steady_clock::time_point started_;
};

}  // namespace ferrule
