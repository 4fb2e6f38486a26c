// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/session/measured_shots.h"
#include "app/window/actions.h"
#include "app/words/ruling_words.h"

class QLabel;
class QToolButton;

namespace ferrule {

/// What a referee asks, and its answers, each with the key that gives it. Not there while nothing is asked.
class QuestionPanel : public QWidget {
  Q_OBJECT
 public:
  /// putsOff: a question may wait.
  QuestionPanel(const ActionSet& actions, bool putsOff, QWidget* parent = nullptr);

  void setQuestion(const std::optional<RefereeQuestion>& question, const SeatNames& names);
  /// The keys of the answers; false for any other action, and where no such answer is offered.
  bool act(ActionId action);

 signals:
  /// place: of the answer or option, from 0.
  void answered(std::size_t place);
  void putOff();

 private:
  bool putsOff_;
  std::size_t choices_ = 0;
  QLabel* words_;
  std::vector<QToolButton*> answers_;
  QLabel* more_;
  QToolButton* later_;
};

/// Brings the questions of measured shots into a panel, and the answers back. Both outlive the connection.
void connectQuestions(QuestionPanel& panel, MeasuredShots& shots);

}  // namespace ferrule
