// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "app/window/actions.h"
#include "app/words/numbers.h"

class QCheckBox;
class QLabel;
class QListWidget;
class QVBoxLayout;

namespace ferrule {

class DrillDesk;

/// A run that goes on: whose turn it is, the keys of what happened, what was met besides, the score so far.
class RunPanel : public QWidget {
  Q_OBJECT
 public:
  RunPanel(DrillDesk& desk, const ActionSet& actions, QWidget* parent = nullptr);

  void refresh(const Numbers& numbers);

 private:
  void showGoals(const Numbers& numbers);

  DrillDesk& desk_;
  QLabel* turn_;
  QLabel* asked_;
  QVBoxLayout* goals_;
  std::vector<QCheckBox*> boxes_;  ///< of the goals after the first
  QLabel* score_;
  QListWidget* tries_;
};

}  // namespace ferrule
