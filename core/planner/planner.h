// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/base/error.h"
#include "core/planner/chances.h"

namespace ferrule {

/// The version of the search that is kept beside suggestions.
inline constexpr int kPlannerVersion = 2;

/// One plan with what it comes to.
struct RankedPlan {
  int rank = 0;  ///< from 1
  Plan plan;
  Chances chances;

  bool operator==(const RankedPlan&) const = default;
};

/// How far a search has come.
enum class SearchEnd {
  Settled,  ///< the ranking is clear, or everything was looked at
  Budget,   ///< the budget was used up
  Stopped,  ///< someone asked to stop
};

/// What is suggested.
struct Suggestion {
  std::vector<RankedPlan> plans;  ///< best first, at most one for each ball, pocket and kind, safeties likewise
  long simulations = 0;           ///< whole shots that were played
  SearchEnd end = SearchEnd::Settled;
  /// The best chance of a direct pot among everything that was tried, listed or not, by the geometry of its line and
  /// the player's scatter; 0: none could be played.
  double directChance = 0.0;

  bool operator==(const Suggestion&) const = default;
};

/// What a search may cost. The same seed and simulations give the same answer on any number of cores; a limit in time
/// ends a search between two stages, so that how far it came depends on the machine.
struct SearchBudget {
  long mostSimulations = 40000;
  std::optional<double> most_s;  ///< nothing: as long as the simulations take
  std::stop_token stop;
  std::uint64_t seed = 1;
  bool deeper = true;         ///< look one shot farther ahead where plans are close
  std::size_t mostPlans = 8;  ///< in the list
};

/// Finds and ranks plans.
///
/// A plan's value is the player's chance of winning the frame (points, in games of points), estimated by playing it
/// many times with the player's scatter, the same errors for every plan, and valuing each outcome at a glance; for the
/// best plans the outcomes are searched again. The opponent's reply counts through the value of what is left.
class Planner {
 public:
  /// Errors: as Simulator::create().
  [[nodiscard]] static Result<Planner> create(const Table& table, const PhysicsParameters& parameters);
  ~Planner();
  Planner(Planner&&) noexcept;
  Planner& operator=(Planner&&) noexcept;

  /// players: the scatter of who is at the table, and of the opponent. onBetter: called on the calling thread after
  /// each stage with the best so far; may be empty.
  /// Errors: NotFound (subject "cue ball") when it neither lies on the table nor is in hand, subject
  /// "legal shot" with detail "no-ball" (none may be met) or "no-way" (none can be reached); as the simulator for balls
  /// that overlap or lie outside.
  [[nodiscard]] Result<Suggestion> suggest(const Situation& situation, const std::array<Scatter, 2>& players,
                                           const SearchBudget& budget = {},
                                           const std::function<void(const Suggestion&)>& onBetter = {}) const;

  /// What one plan comes to, apart from any search. Errors: as suggest(), FieldInvalid for a strike that is none.
  [[nodiscard]] Result<Chances> chances(const Situation& situation, const Plan& plan,
                                        const std::array<Scatter, 2>& players, std::size_t samples,
                                        std::uint64_t seed) const;

  [[nodiscard]] const Simulator& simulator() const;
  [[nodiscard]] const PocketWindows& windows() const;

 private:
  struct Impl;
  explicit Planner(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace ferrule
