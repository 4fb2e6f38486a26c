// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QComboBox;
class QTableWidget;

namespace ferrule {

class ErrorMapView;

/// The error map, the budget at a place, and what it is worth in a shot.
class MapPage : public SetupPage {
  Q_OBJECT
 public:
  explicit MapPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

 private:
  QWidget* makeShot();
  void showBudget();
  void showWorth();

  ErrorMapView* map_;
  QLabel* place_;
  QTableWidget* budget_;
  QComboBox* pocket_;
  QDoubleSpinBox* objectX_;
  QDoubleSpinBox* objectY_;
  QDoubleSpinBox* cut_;
  QDoubleSpinBox* away_;
  QDoubleSpinBox* off_;
  QLabel* worth_;
  QLabel* stated_;
  QLabel* first_;
};

}  // namespace ferrule
