// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/session/film_desk.h"
#include "app/window/actions.h"
#include "app/words/numbers.h"

class QLabel;
class QProgressBar;
class QPushButton;
class QToolButton;

namespace ferrule {

class MeasuredShotList;
class MeasuringPictures;
class QuestionPanel;

/// A session from a film while it is measured and afterwards: the pictures in the middle, progress and shots on the
/// right.
class FilmPage : public QWidget {
  Q_OBJECT
 public:
  FilmPage(FilmDesk& desk, const ActionSet& actions, QWidget* parent = nullptr);

  void setNumbers(const Numbers& numbers);
  [[nodiscard]] MeasuringPictures& pictures() { return *pictures_; }
  /// Answers, their undo, and zoom; false for any other action.
  bool act(ActionId action);

 signals:
  void lookWanted();
  /// The person is done with this session.
  void closeWanted();

 private:
  QWidget* makePanel(const ActionSet& actions);
  void refresh();
  void showProgress();

  FilmDesk& desk_;
  Numbers numbers_;
  MeasuringPictures* pictures_;
  QLabel* title_;
  QLabel* words_;
  QProgressBar* progress_;
  QToolButton* stop_;
  QuestionPanel* question_;
  MeasuredShotList* shots_;
  QPushButton* look_;
  QPushButton* close_;
};

}  // namespace ferrule
