// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointer>

#include "app/setup/setup_page.h"

class QComboBox;

namespace ferrule {

class ProjectorScreen;

/// A projector over the table, which not everybody has: its screen, its grid, and where its light falls.
class ProjectorPage : public SetupPage {
  Q_OBJECT
 public:
  explicit ProjectorPage(SetupDesk& desk, QWidget* parent = nullptr);
  ~ProjectorPage() override;
  void refresh() override;

 private:
  void listScreens();
  /// The chosen screen's own window, opened black where it is not open yet.
  ProjectorScreen* light();
  void showGrid();
  void showLines();

  QComboBox* screens_;
  QLabel* result_;
  QPointer<ProjectorScreen> screen_;
};

}  // namespace ferrule
