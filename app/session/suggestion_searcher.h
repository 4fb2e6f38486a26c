// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <map>

#include "app/session/suggestion_service.h"

namespace ferrule {

/// Does the thinking of the suggestion service, on its thread; keeps the planner of the table that was asked about
/// last, and the scatter of who was.
class SuggestionSearcher : public QObject {
  Q_OBJECT
 public:
  void search(const SuggestionQuestion& question, int number, const std::stop_token& stop);
  void show(const RankedPlan& plan, int number);
  void tryOut(const Plan& plan, const StrikeWish& wish, int number);

 signals:
  void answered(std::shared_ptr<const ferrule::SuggestionAnswer> answer, int number);
  void played(std::shared_ptr<const ferrule::PlayedPlan> plan, int number);
  void failed(const ferrule::Error& error, int number);

 private:
  /// Brings the planner to the question's table, with the table's own fingerprint where the record holds one.
  [[nodiscard]] Result<void> prepare(const SuggestionQuestion& question);
  [[nodiscard]] Result<std::optional<ScatterEstimate>> estimateFor(const ForWhom& whom);
  [[nodiscard]] Result<std::optional<ScatterEstimate>> estimateFromRecord(const ForWhom& whom) const;
  [[nodiscard]] PlayedPlan playedOut(const RankedPlan& plan) const;

  /// What the planner was made from.
  struct PlannedOn {
    MeasuredTable table;
    PhysicsParameters parameters;
    std::string record;  ///< whose fingerprint it plays on

    bool operator==(const PlannedOn&) const = default;
  };

  std::optional<Planner> planner_;
  std::optional<PlannedOn> plannedOn_;
  std::optional<SuggestionQuestion> question_;
  Scatter scatter_;
  /// Read from the whole record once: single shots move it little, and the record may be long.
  std::optional<std::pair<ForWhom, std::optional<ScatterEstimate>>> known_;
};

}  // namespace ferrule
