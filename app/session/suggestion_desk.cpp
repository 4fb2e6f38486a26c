// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/suggestion_desk.h"

#include "app/words/plan_sentence.h"
#include "core/planner/suggestion_text.h"

namespace ferrule {

SuggestionDesk::SuggestionDesk(QObject* parent) : QObject(parent) {
  connect(&searcher_, &SuggestionService::answered, this, [this](std::shared_ptr<const SuggestionAnswer> answer) {
    found_ = std::move(answer);
    // Whoever looks at another plan keeps it until the list is final.
    if (!shownPlan_ || found_->final || shownPlan_->ranked.rank == 1)
      shownPlan_ = std::make_shared<const PlayedPlan>(found_->first);
    emit changed();
  });
  connect(&searcher_, &SuggestionService::played, this, [this](std::shared_ptr<const PlayedPlan> plan) {
    triedInVain_ = plan == nullptr;
    if (plan) shownPlan_ = std::move(plan);
    emit changed();
  });
  connect(&searcher_, &SuggestionService::failed, this, &SuggestionDesk::failed);
}

void SuggestionDesk::want(bool wanted, std::optional<PlayerLevel> level) {
  wanted_ = wanted;
  level_ = level;
}

void SuggestionDesk::think(const std::optional<SuggestionQuestion>& question) {
  searcher_.stop();
  found_.reset();
  shownPlan_.reset();
  triedInVain_ = false;
  if (!wanted_ || !question) return;
  SuggestionQuestion asked = *question;
  if (level_) {
    asked.whom.level = *level_;
    asked.whom.player.clear();
  }
  searcher_.ask(asked);
}

void SuggestionDesk::showPlan(std::size_t plan) {
  if (found_ && plan < found_->suggestion.plans.size()) searcher_.show(found_->suggestion.plans[plan]);
}

void SuggestionDesk::tryStrike(const StrikeWish& wish) {
  if (shownPlan_) searcher_.tryOut(shownPlan_->ranked.plan, wish);
}

std::string SuggestionDesk::text() const {
  if (!found_) return {};
  return suggestionText(found_->suggestion, found_->scatter, planSentences(found_->suggestion));
}

}  // namespace ferrule
