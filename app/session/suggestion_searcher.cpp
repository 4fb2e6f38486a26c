// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/suggestion_searcher.h"

#include "core/measure/player_scatter.h"
#include "core/measure/table_fingerprint.h"
#include "core/planner/candidate.h"
#include "core/record/record.h"

namespace ferrule {

namespace {

/// Settled within this; the first list comes far earlier.
constexpr double kMost_s = 1.5;

Result<PhysicsParameters> parametersOf(const SuggestionQuestion& question) {
  if (question.whom.record.empty()) return question.parameters;
  auto record = Record::open(question.whom.record, {.mode = RecordMode::ReadOnly});
  if (!record) return tl::make_unexpected(record.error());
  const auto known = latestFingerprint(*record, question.table);
  if (!known) return tl::make_unexpected(known.error());
  if (!*known) return question.parameters;
  return appliedWhereUsual((*known)->fingerprint, question.parameters, question.parameters);
}

}  // namespace

Result<void> SuggestionSearcher::prepare(const SuggestionQuestion& question) {
  PlannedOn wanted{question.table, question.parameters, question.whom.record};
  if (planner_ && plannedOn_ == wanted) return {};
  const auto parameters = parametersOf(question);
  if (!parameters) return tl::make_unexpected(parameters.error());
  auto planner = Planner::create(question.table.table, *parameters);
  if (!planner) return tl::make_unexpected(planner.error());
  planner_.emplace(std::move(*planner));
  plannedOn_ = std::move(wanted);
  return {};
}

Result<std::optional<ScatterEstimate>> SuggestionSearcher::estimateFor(const ForWhom& whom) {
  if (known_ && known_->first == whom) return known_->second;
  auto estimate = estimateFromRecord(whom);
  if (estimate) known_.emplace(whom, *estimate);
  return estimate;
}

Result<std::optional<ScatterEstimate>> SuggestionSearcher::estimateFromRecord(const ForWhom& whom) const {
  if (whom.player.empty()) return std::optional<ScatterEstimate>();
  auto record = Record::open(whom.record, {.mode = RecordMode::ReadOnly});
  if (!record) return tl::make_unexpected(record.error());
  const auto estimate = playerScatter(*record, whom.player, scatterOf(whom.level), planner_->simulator().parameters());
  // Who has just been entered is not in the record yet.
  if (!estimate && estimate.error().code == ErrorCode::NotFound) {
    ScatterEstimate unknown;
    unknown.player = scatterOf(whom.level);
    return std::optional(unknown);
  }
  if (!estimate) return tl::make_unexpected(estimate.error());
  return std::optional(*estimate);
}

PlayedPlan SuggestionSearcher::playedOut(const RankedPlan& ranked) const {
  PlayedPlan played{ranked, question_->situation.balls, {}, {}};
  const Plan& plan = ranked.plan;
  if (plan.cueBall) played.placed = withCueBallAt(question_->situation, *plan.cueBall).balls;
  if (const auto simulated = planner_->simulator().shoot(played.placed, plan.strike))
    played.ways = plannedWays(*simulated);
  played.margin = aimMargin(*planner_, question_->situation, plan);
  return played;
}

void SuggestionSearcher::search(const SuggestionQuestion& question, int number, const std::stop_token& stop) {
  if (stop.stop_requested()) return;
  if (const auto ready = prepare(question); !ready) {
    emit failed(ready.error(), number);
    return;
  }
  const auto estimate = estimateFor(question.whom);
  if (!estimate) {
    emit failed(estimate.error(), number);
    return;
  }
  question_ = question;
  scatter_ = *estimate ? (*estimate)->player : scatterOf(question.whom.level);
  const auto tell = [&](const Suggestion& suggestion, bool final) {
    if (suggestion.plans.empty()) return;
    emit answered(std::make_shared<const SuggestionAnswer>(
                      SuggestionAnswer{suggestion, scatter_, *estimate, playedOut(suggestion.plans.front()), final}),
                  number);
  };
  SearchBudget budget;
  budget.most_s = kMost_s;
  budget.stop = stop;
  const auto found = planner_->suggest(question.situation, {scatter_, scatter_}, budget,
                                       [&](const Suggestion& better) { tell(better, false); });
  if (stop.stop_requested()) return;
  if (!found) {
    emit failed(found.error(), number);
  } else {
    tell(*found, true);
  }
}

void SuggestionSearcher::show(const RankedPlan& plan, int number) {
  if (question_) emit played(std::make_shared<const PlayedPlan>(playedOut(plan)), number);
}

void SuggestionSearcher::tryOut(const Plan& plan, const StrikeWish& wish, int number) {
  if (!question_) return;
  const auto other = withOtherStrike(*planner_, question_->situation, plan, wish, {scatter_, scatter_});
  emit played(other ? std::make_shared<const PlayedPlan>(playedOut(*other)) : nullptr, number);
}

}  // namespace ferrule
