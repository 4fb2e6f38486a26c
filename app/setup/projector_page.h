// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QComboBox;
class QScreen;

namespace ferrule {

class ProjectorDesk;

/// A projector over the table, which not everybody has: its screen, its grid, and where its light falls.
class ProjectorPage : public SetupPage {
  Q_OBJECT
 public:
  ProjectorPage(SetupDesk& desk, ProjectorDesk& projector, QWidget* parent = nullptr);
  void refresh() override;
  /// A position file by the projector that is being set up.
  void showPosition(const QString& path);

 private:
  void listScreens();
  [[nodiscard]] QScreen* screen() const;
  /// Says so where its light is not known, or was found on another screen.
  bool lacksProjector();
  void showGrid();
  void showLines();

  ProjectorDesk& projector_;
  QComboBox* screens_;
  QLabel* result_;
};

}  // namespace ferrule
