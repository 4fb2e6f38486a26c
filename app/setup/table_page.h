// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QComboBox;
class QLineEdit;

namespace ferrule {

class MeasurePicture;

/// The table's name and size, and what two diagonals say of its corners.
class TablePage : public SetupPage {
  Q_OBJECT
 public:
  explicit TablePage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  QLineEdit* name_;
  QComboBox* size_;
  QDoubleSpinBox* length_;
  QDoubleSpinBox* width_;
  QDoubleSpinBox* diagonalA_;
  QDoubleSpinBox* diagonalB_;
  QLabel* square_;
  MeasurePicture* picture_;
};

/// The balls' size and weight.
class BallsPage : public SetupPage {
  Q_OBJECT
 public:
  explicit BallsPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  QDoubleSpinBox* diameter_;
  QDoubleSpinBox* mass_;
};

}  // namespace ferrule
