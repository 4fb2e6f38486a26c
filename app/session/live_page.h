// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

#include "app/session/live_desk.h"
#include "app/window/actions.h"
#include "app/words/numbers.h"

class QLabel;
class QPushButton;
class QToolButton;

namespace ferrule {

class MeasuredShotList;
class MeasuringPictures;
class ProjectorDesk;
class SessionLight;
class QuestionPanel;
class SuggestionPanel;

/// A session while it is played: what the camera sees and the plan of the same image in the middle, whose turn it is,
/// the suggestion and the shots on the right.
class LivePage : public QWidget {
  Q_OBJECT
 public:
  LivePage(LiveDesk& desk, ProjectorDesk& projector, const ActionSet& actions, QWidget* parent = nullptr);

  void setNumbers(const Numbers& numbers);
  [[nodiscard]] MeasuringPictures& pictures() { return *pictures_; }
  /// Answers, their undo, and zoom; false for any other action.
  bool act(ActionId action);
  /// For whom a suggestion is wanted.
  [[nodiscard]] std::optional<PlayerLevel> level() const;

 signals:
  void lookWanted();
  /// The person is done with this session.
  void closeWanted();

 private:
  QWidget* makePanel(const ActionSet& actions);
  void refresh();
  void showCounts();
  void showCheck();
  void showSuggestion();
  void showLight();

  LiveDesk& desk_;
  Numbers numbers_;
  QTimer counting_;  ///< the queue tells nobody when it fills
  MeasuringPictures* pictures_;
  QLabel* title_;
  QLabel* turn_;
  QLabel* score_;
  QLabel* counts_;
  QLabel* check_;
  QLabel* film_;
  QLabel* exposure_;
  SuggestionPanel* suggestion_;
  SessionLight* light_;
  QuestionPanel* question_;
  MeasuredShotList* shots_;
  QToolButton* end_;
  QPushButton* look_;
  QPushButton* close_;
};

}  // namespace ferrule
