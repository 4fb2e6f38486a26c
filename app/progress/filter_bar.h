// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/progress/progress_service.h"

class QComboBox;
class QDateEdit;

namespace ferrule {

/// Whose shots and which: player, period, table, game, practice or match.
class FilterBar : public QWidget {
  Q_OBJECT
 public:
  /// name: before the object names of its fields, so that two bars can stand in one place.
  explicit FilterBar(const QString& name, QWidget* parent = nullptr);

  /// Leaves player and period alone.
  void showPeriodOnly();
  void setPlayers(const std::vector<Player>& players);
  /// What there is to choose from, keeping what is chosen.
  void setChoices(const std::vector<std::string>& tables, const std::vector<std::string>& games);
  void setPlayer(const QString& player);
  /// Somebody who was erased is not offered any more.
  void forgetPlayer(const QString& player);
  [[nodiscard]] QString player() const;
  [[nodiscard]] ProgressWanted wanted() const;

 signals:
  void changed();

 private:
  void choosePeriod();

  QComboBox* player_;
  QComboBox* period_;
  QDateEdit* from_;
  QDateEdit* to_;
  QComboBox* table_;
  QComboBox* game_;
  QComboBox* occasion_;
};

}  // namespace ferrule
