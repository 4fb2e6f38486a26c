// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/setup/setup_page.h"

class QCheckBox;
class QComboBox;
class QSpinBox;
class QTableWidget;

namespace ferrule {

class CoverageView;
class StillCamera;

/// The board and its print, the stills of it, and the lens that they give.
class LensPage : public SetupPage {
  Q_OBJECT
 public:
  explicit LensPage(SetupDesk& desk, QWidget* parent = nullptr);
  void refresh() override;

  /// Pictures among files and in folders (not deeper).
  [[nodiscard]] static QStringList picturesIn(const QStringList& paths);

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void makeBoardForm();
  void makeStills();
  void boardChanged();
  void printBoard();
  void showStills();
  void showResult();
  void light();

  QComboBox* kind_;
  QSpinBox* columns_;
  QSpinBox* rows_;
  QLabel* counted_;
  QDoubleSpinBox* square_;
  QDoubleSpinBox* marker_;
  QComboBox* dictionary_;
  QComboBox* paper_;
  QDoubleSpinBox* rulerAcross_;
  QDoubleSpinBox* rulerDown_;
  QTableWidget* stills_;
  CoverageView* coverage_;
  StillCamera* camera_;
  QLabel* covered_;
  QCheckBox* withoutBoard_;
  QLabel* result_;
  QTableWidget* parameters_;
};

}  // namespace ferrule
