// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>
#include <QWidget>
#include <optional>

#include "app/session/suggestion_service.h"
#include "app/words/numbers.h"

class QAction;
class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QListWidget;

namespace ferrule {

/// What may be asked of the planner while a session runs: for whom, which of the plans, and what another speed or tip
/// point would come to.
class SuggestionPanel : public QWidget {
  Q_OBJECT
 public:
  explicit SuggestionPanel(QAction* ask, QWidget* parent = nullptr);

  /// The level that is asked for; nothing: the player at the table, as the record knows them.
  [[nodiscard]] std::optional<PlayerLevel> level() const;
  /// shooter: who is at the table; empty where nobody is known by name.
  void setShooter(const QString& shooter);
  /// Hidden while wanted is false. answer and shown are null until something was found.
  void show(bool wanted, const SuggestionAnswer* answer, const PlayedPlan* shown, bool triedInVain,
            const Numbers& numbers);

 signals:
  void levelChosen();
  void planChosen(std::size_t plan);
  void strikeWished(const ferrule::StrikeWish& wish);

 private:
  QWidget* makeWhatIf();
  QDoubleSpinBox* makeSpin(const char* name, const QString& accessible);
  void fillPlans(const SuggestionAnswer& answer, const PlayedPlan& shown, const Numbers& numbers);
  void fillWish(const PlayedPlan& shown, const Numbers& numbers);

  QComboBox* level_;
  QWidget* found_;
  QListWidget* plans_;
  QLabel* words_;
  QDoubleSpinBox* speed_;
  QDoubleSpinBox* side_;
  QDoubleSpinBox* height_;
  QTimer wish_;  ///< waits until a person has stopped turning
  double mpsPerUnit_ = 1.0;
};

}  // namespace ferrule
