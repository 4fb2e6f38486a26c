// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>

#include "app/words/numbers.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ferrule {

class ChartView;
class DrillDesk;
struct Error;

/// The drill that is looked at: what it is for, where the balls lie, its mirror images, how to begin a run, and how the
/// runs so far came out.
class DetailPanel : public QWidget {
  Q_OBJECT
 public:
  explicit DetailPanel(DrillDesk& desk, QWidget* parent = nullptr);

  void refresh(const Numbers& numbers);
  /// A table's size or file, as if a person had put it in.
  void putTable(const QString& table);

 signals:
  /// A table that cannot be read.
  void failed(const ferrule::Error& error);
  /// What a person wants with the drill itself.
  void editWanted();
  void copyWanted();
  void removeWanted();
  void exportWanted();

 private:
  QWidget* makeBegin();
  QWidget* makeCount();
  QWidget* makeOwn();
  bool takeTable();
  void showHistory(const Numbers& numbers);

  DrillDesk& desk_;
  QLabel* text_;
  QLabel* caution_;
  QLabel* goals_;
  QLabel* places_;
  QCheckBox* sides_;
  QCheckBox* ends_;
  QPushButton* anew_;
  QComboBox* player_;
  QComboBox* table_;
  QPushButton* begin_;
  QPushButton* resume_;
  QComboBox* session_;
  QPushButton* count_;
  QCheckBox* countsOn_;
  QTimer counting_;  ///< a session that is being played tells nobody when it grows
  QPushButton* edit_;
  QPushButton* remove_;
  ChartView* chart_;
  QLabel* history_;
};

}  // namespace ferrule
