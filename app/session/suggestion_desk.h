// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/session/suggestion_service.h"

namespace ferrule {

/// The suggestion of a session: whether anyone wants one, what was found, and which plan of it is drawn. Knows no
/// widgets.
class SuggestionDesk : public QObject {
  Q_OBJECT
 public:
  explicit SuggestionDesk(QObject* parent = nullptr);

  /// Whether a suggestion is wanted, and for whom; level: nothing: for the player at the table, as the record knows
  /// them. think() then begins to look for it.
  void want(bool wanted, std::optional<PlayerLevel> level = {});
  [[nodiscard]] bool isWanted() const { return wanted_; }
  /// Forgets what was found, and looks anew where a suggestion is wanted. Of question.whom the level is filled in here.
  void think(const std::optional<SuggestionQuestion>& question);
  /// Draws another plan of the list, from 0.
  void showPlan(std::size_t plan);
  /// What the shown plan would come to with another speed and tip point.
  void tryStrike(const StrikeWish& wish);

  /// Null until something was found.
  [[nodiscard]] const SuggestionAnswer* found() const { return found_.get(); }
  /// The plan that is drawn: the first, another one of the list or one that a person tries. Null until one was found.
  [[nodiscard]] const PlayedPlan* shownPlan() const { return shownPlan_.get(); }
  /// The last strike that was tried pots nothing however it is aimed.
  [[nodiscard]] bool triedInVain() const { return triedInVain_; }
  /// What was found, in the form of the files; empty until something was.
  [[nodiscard]] std::string text() const;

 signals:
  void changed();
  void failed(const ferrule::Error& error);

 private:
  SuggestionService searcher_;
  std::shared_ptr<const SuggestionAnswer> found_;
  std::shared_ptr<const PlayedPlan> shownPlan_;
  bool triedInVain_ = false;
  bool wanted_ = false;
  std::optional<PlayerLevel> level_;
};

}  // namespace ferrule
