// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/window/actions.h"

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;
class QSpinBox;

namespace ferrule {

class DrillDesk;

/// A drill of one's own while it is edited: words, what is asked, tries, set-ups, and what still keeps it from being
/// played. The balls and the zone are moved in the picture.
class EditorPanel : public QWidget {
  Q_OBJECT
 public:
  EditorPanel(DrillDesk& desk, const ActionSet& actions, QWidget* parent = nullptr);

  void refresh();

 protected:
  bool eventFilter(QObject* object, QEvent* event) override;

 private:
  QWidget* makeForm();
  QWidget* makeSetUps();
  void addSetUp();
  void removeSetUp();
  void bringBall();
  void widenZone(double reach_mm);

  DrillDesk& desk_;
  QLineEdit* title_;
  QPlainTextEdit* text_;
  QLineEdit* tags_;
  QComboBox* ask_;
  QSpinBox* trials_;
  QDoubleSpinBox* reach_;
  QLabel* reachLabel_;
  QCheckBox* inTurn_;
  QCheckBox* turns_;
  QCheckBox* jump_;
  QComboBox* ball_;
  QPushButton* less_;
  QLabel* faults_;
  QPushButton* keep_;
};

}  // namespace ferrule
