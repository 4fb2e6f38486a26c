// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QCheckBox;
class QComboBox;
class QTableWidget;

namespace ferrule {

class MeasurePicture;

/// The tags on the rails: their print, and where each one's corners lie.
class TagsPage : public SetupPage {
  Q_OBJECT
 public:
  explicit TagsPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  void printTags();
  void cellChanged(int row, int column);

  QCheckBox* withoutTags_;
  QComboBox* head_;
  QLabel* headWords_;  ///< what the lines cannot tell
  QDoubleSpinBox* side_;
  QDoubleSpinBox* height_;
  QComboBox* paper_;
  QTableWidget* tags_;
  QLabel* state_;
  MeasurePicture* picture_;
};

}  // namespace ferrule
