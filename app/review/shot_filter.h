// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "app/progress/progress_service.h"
#include "app/window/shot_list.h"
#include "app/words/numbers.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QDoubleSpinBox;
class QLabel;
class QListView;
class QSpinBox;
class QStringListModel;

namespace ferrule {

/// "Missed pots", "Another shot was better".
[[nodiscard]] QString shotGroupWords(ShotGroup group);

/// A list of shots that were asked for: the conditions above, the shots below. A list that another place handed over is
/// shown with its title until a condition is changed.
class ShotFilter : public QWidget {
  Q_OBJECT
 public:
  explicit ShotFilter(QWidget* parent = nullptr);

  void setPlayers(const std::vector<Player>& players);
  /// Of the record; the chosen one stays chosen where it is among them.
  void setTags(const std::vector<std::string>& tags);
  /// Of the record: their tables and who played can be chosen; what is chosen stays so where it is among them.
  void setSessions(const std::vector<SessionSummary>& sessions);
  void setList(const ShotList& list);
  void setNumbers(const Numbers& numbers);
  [[nodiscard]] const ShotList& list() const { return list_; }
  [[nodiscard]] HistoryFilter filter() const;
  /// Empty for everybody.
  [[nodiscard]] std::string player() const;

  /// The row that is looked at; -1 for none.
  [[nodiscard]] int current() const;
  /// Goes on or back in the list; false at its end.
  bool step(int shots);
  void focusConditions();

 signals:
  /// A condition was changed.
  void changed();
  void chosen(const ferrule::ListedShot& shot);
  void closed();

 private:
  QComboBox* player_;
  QComboBox* group_;
  QComboBox* side_;
  QComboBox* cutSide_;
  QDoubleSpinBox* leastCut_;
  QDoubleSpinBox* mostCut_;
  QDoubleSpinBox* leastSpeed_;
  QDoubleSpinBox* mostSpeed_;
  QDoubleSpinBox* product_;
  QComboBox* pocket_;
  QComboBox* game_;
  QComboBox* table_;
  QComboBox* opponent_;
  QComboBox* tag_;
  QCheckBox* since_;
  QDateEdit* from_;
  QCheckBox* until_;
  QDateEdit* to_;
  QComboBox* occasion_;
  QSpinBox* minutes_;
  QLabel* title_;
  QListView* rows_;
  QStringListModel* model_;
  ShotList list_;
  Numbers numbers_;
};

}  // namespace ferrule
