// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/progress/progress_service.h"

class QComboBox;
class QDateEdit;

namespace ferrule {

/// Whose shots and which: player, period, table, game, practice or match, opponent, drill, pocket, cut and distance.
class FilterBar : public QWidget {
  Q_OBJECT
 public:
  /// name: before the object names of its fields, so that two bars can stand in one place.
  explicit FilterBar(const QString& name, QWidget* parent = nullptr);

  /// Leaves player and period alone.
  void showPeriodOnly();
  void setPlayers(const std::vector<Player>& players);
  /// What there is to choose from, keeping what is chosen.
  void setChoices(const ProgressColumn& column);
  /// How bands of cuts and distances are written.
  void setNumbers(const Numbers& numbers);
  void setPlayer(const QString& player);
  /// Somebody who was erased is not offered any more.
  void forgetPlayer(const QString& player);
  [[nodiscard]] QString player() const;
  [[nodiscard]] ProgressWanted wanted() const;
  /// What is chosen of drill, pocket, cut and distance, in words; empty where nothing is.
  [[nodiscard]] QString shotWords() const;

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
  QComboBox* opponent_;
  QComboBox* drill_;
  QComboBox* pocket_;
  QComboBox* cut_;
  QComboBox* way_;
};

}  // namespace ferrule
