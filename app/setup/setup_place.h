// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QButtonGroup>

#include "app/setup/setup_desk.h"
#include "app/window/place.h"

class QLabel;
class QProgressBar;
class QStackedWidget;

namespace ferrule {

class MessageBar;
class ProjectorDesk;
class SetupPage;
class UndoRow;

/// Set-up: a path of steps from the table to a rig that can be trusted, which may be left and entered again anywhere.
class SetupPlace : public Place {
  Q_OBJECT
 public:
  /// folder: where a set-up under way is kept.
  /// projector: that every place shares; null: one of this place's own.
  SetupPlace(const ActionSet& actions, const QString& folder, ProjectorDesk* projector = nullptr,
             QWidget* parent = nullptr);

  bool act(ActionId action) override;
  [[nodiscard]] bool isBusy() const override { return desk_.job().isRunning(); }
  void setNumbers(const Numbers& numbers) override;
  void save(QSettings&) const override {}
  void restore(const QSettings&) override {}

  [[nodiscard]] SetupDesk& desk() { return desk_; }
  [[nodiscard]] ProjectorDesk& projector() { return *projector_; }
  void showStep(SetupStep step);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeSteps();
  QWidget* makeFoot(const ActionSet& actions);
  void refresh();
  void checkAgain();

  SetupDesk desk_;
  ProjectorDesk* projector_;
  bool opened_ = false;
  std::vector<SetupPage*> pages_;
  QButtonGroup steps_;
  UndoRow* edits_;
  QLabel* title_;
  MessageBar* message_;
  QStackedWidget* stack_;
  QProgressBar* progress_;
  QLabel* work_;
  QWidget* working_;
};

/// Where the program keeps a set-up under way.
[[nodiscard]] QString ownSetupFolder();

}  // namespace ferrule
