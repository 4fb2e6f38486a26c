// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>

#include "app/setup/rig_in_use.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace ferrule {

class PathField;

/// What a film or a camera is measured with: a rig that is known, or other files. Where there is none, it says that
/// Set-up makes one.
class RigChoice : public QWidget {
  Q_OBJECT
 public:
  explicit RigChoice(QWidget* parent = nullptr);

  /// Looks again for what is known; what was chosen stays chosen.
  void refresh();
  /// Nothing while no rig file is named.
  [[nodiscard]] std::optional<RigInUse> chosen() const;
  void chooseFiles(const QString& rig, const QString& table);

 signals:
  void setUpWanted();
  void chosenChanged();

 private:
  void showFiles();

  QComboBox* known_;
  QWidget* files_;
  PathField* rig_;
  PathField* table_;
  QLabel* none_;
  QPushButton* make_;
};

}  // namespace ferrule
