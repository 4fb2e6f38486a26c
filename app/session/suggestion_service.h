// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QThread>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>

#include "app/picture/planned_ways.h"
#include "core/planner/scatter_estimate.h"
#include "core/planner/what_if.h"
#include "core/table/measured_table.h"

namespace ferrule {

class SuggestionSearcher;

/// For whom a shot is looked for.
struct ForWhom {
  PlayerLevel level = PlayerLevel::Club;  ///< of a player of whom the record knows nothing
  std::string player;                     ///< whose own scatter the record tells; empty: the level alone
  std::string record;                     ///< path; the table's fingerprint is looked for there too; empty: none

  bool operator==(const ForWhom&) const = default;
};

/// A position to be thought about.
struct SuggestionQuestion {
  MeasuredTable table;
  PhysicsParameters parameters;
  Situation situation;
  ForWhom whom;
};

/// A plan to be drawn: with the ways that the balls take when it comes out as asked.
struct PlayedPlan {
  RankedPlan ranked;  ///< rank 0 for one that a person wanted to try
  Position placed;    ///< before the shot; a cue ball in hand where the plan puts it
  PlannedWays ways;
  std::optional<AimMargin> margin;  ///< of a pot
};

/// What was found so far.
struct SuggestionAnswer {
  Suggestion suggestion;
  Scatter scatter;
  std::optional<ScatterEstimate> estimate;  ///< of the player that was asked about
  PlayedPlan first;
  bool final = false;  ///< the search is over
};

/// Searches on a thread of its own. A new question stops the search before it; answers come as signals on the caller's
/// thread, each better than the one before.
class SuggestionService : public QObject {
  Q_OBJECT
 public:
  explicit SuggestionService(QObject* parent = nullptr);
  ~SuggestionService() override;

  void ask(const SuggestionQuestion& question);
  /// Plays one of the plans found for the last question.
  void show(const RankedPlan& plan);
  /// Plays such a plan with another strike.
  void tryOut(const Plan& plan, const StrikeWish& wish);
  /// Nothing is answered any more until the next question.
  void stop();

 signals:
  void answered(std::shared_ptr<const ferrule::SuggestionAnswer> answer);
  /// Null where no aim makes the wished strike pot the ball.
  void played(std::shared_ptr<const ferrule::PlayedPlan> plan);
  void failed(const ferrule::Error& error);

 private:
  template <class Work>
  void onThread(Work work);

  QThread thread_;
  SuggestionSearcher* searcher_;
  std::stop_source stop_;
  int question_ = 0;
};

}  // namespace ferrule
