// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/progress/progress_service.h"
#include "app/window/place.h"

class QCheckBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QSplitter;
class QStackedWidget;

namespace ferrule {

class ChartView;
class FilterBar;
class MessageBar;

/// Progress: the figures of one player, or of two players or periods side by side; on the right what to work on, what
/// the figures rest on, and what is pointed at.
class ProgressPlace : public Place {
  Q_OBJECT
 public:
  ProgressPlace(const ActionSet& actions, ProgressService::Clock now, QWidget* parent = nullptr);

  bool act(ActionId action) override;
  void openRecord(const QString& path) override;
  void forgetPlayer(const QString& name) override;
  void setNumbers(const Numbers& numbers) override;
  void save(QSettings& settings) const override;
  void restore(const QSettings& settings) override;

  /// Empty until the first answer.
  [[nodiscard]] std::shared_ptr<const ProgressAnswer> answer() const { return answer_; }
  /// Writes the chart that was used last; says what went wrong, or where it lies.
  void exportChart(const QString& path);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  struct Shown {
    ChartView* view = nullptr;
    std::size_t column = 0;
    std::size_t figure = 0;
  };

  QWidget* makeHeader();
  QWidget* makePanel(const ActionSet& actions);
  QWidget* makeEmpty(const ActionSet& actions);
  void read(const QString& path);
  void ask();
  void take(std::shared_ptr<const ProgressAnswer> answer);
  void layOut();
  void showPanel();
  void showShotsBehind();
  [[nodiscard]] const Shown* current() const;
  [[nodiscard]] QString columnWords(std::size_t column) const;

  ProgressService service_;
  ProgressService::Clock now_;
  Numbers numbers_;
  QString wantedRecord_;  ///< empty for the program's own record
  QString wantedPlayer_;  ///< from the last time
  QString record_;        ///< that was read
  QString stamp_;
  std::shared_ptr<const ProgressAnswer> answer_;
  std::vector<Shown> shown_;
  std::optional<std::size_t> current_;  ///< of shown_: the chart that was used last

  QStackedWidget* stack_;
  QLabel* emptyWords_;
  FilterBar* first_;
  FilterBar* second_;
  QCheckBox* compare_;
  QSplitter* columns_;
  QScrollArea* scroll_;
  QLabel* busy_;
  QLabel* work_;
  QLabel* basis_;
  QLabel* pointed_;
  MessageBar* message_;
};

}  // namespace ferrule
