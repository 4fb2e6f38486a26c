// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/measure/hand_session.h"
#include "core/record/record_values.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace ferrule {

/// What a session needs before its first shot: game, players, table, what it is for. Shown while no session runs.
class StartForm : public QWidget {
  Q_OBJECT
 public:
  explicit StartForm(QWidget* parent = nullptr);

  /// path: where the session will be kept. broken: the name of a session that was broken off; empty for none.
  void setRecord(const QString& path, const QString& broken);

 signals:
  void beginWanted(const ferrule::HandTerms& terms, ferrule::SessionKind kind);
  void resumeWanted();
  /// A table that cannot be read.
  void failed(const ferrule::Error& error);

 private:
  void begin();

  QLineEdit* name_;
  QComboBox* game_;
  QLineEdit* players_;
  QComboBox* table_;
  QComboBox* kind_;
  QLabel* recordWords_;
  QLabel* brokenWords_;
  QPushButton* resume_;
};

}  // namespace ferrule
