// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTimer>

#include "app/progress/progress_service.h"
#include "app/report/report.h"
#include "app/window/place.h"

class QComboBox;
class QLabel;
class QPlainTextEdit;
class QScrollArea;
class QSplitter;
class QStackedWidget;

namespace ferrule {

class FilterBar;
class MessageBar;
class SheetsView;

/// Reports: student, period, language, paper and the coach's note; the sheets as they will be printed; export.
class ReportsPlace : public Place {
  Q_OBJECT
 public:
  ReportsPlace(const ActionSet& actions, ProgressService::Clock now, QWidget* parent = nullptr);

  bool act(ActionId action) override;
  void openRecord(const QString& path) override;
  void forgetPlayer(const QString& name) override;
  void setNumbers(const Numbers& numbers) override;
  void save(QSettings& settings) const override;
  void restore(const QSettings& settings) override;

  /// The report that is shown; nothing before the first answer.
  [[nodiscard]] const std::optional<Report>& report() const { return report_; }
  /// Writes it by the path's ending: .pdf, .html or .csv. Says where it lies, or what went wrong.
  void exportReport(const QString& path);

 signals:
  /// The sheets show what was chosen.
  void shown();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeMiddle(const ActionSet& actions);
  QWidget* makePanel(const ActionSet& actions);
  QWidget* makeEmpty(const ActionSet& actions);
  void read(const QString& path);
  void ask();
  void rebuild();

  ProgressService service_;
  ProgressService::Clock now_;
  Numbers numbers_;
  QString wantedRecord_;
  QString wantedPlayer_;
  QString record_;
  QString stamp_;
  std::shared_ptr<const ProgressAnswer> answer_;
  std::optional<Report> report_;
  QTimer soon_;  ///< after the last key in the note

  QStackedWidget* stack_;
  QLabel* emptyWords_;
  FilterBar* filter_;
  QComboBox* language_;
  QComboBox* paper_;
  QPlainTextEdit* note_;
  QSplitter* columns_;
  SheetsView* sheets_;
  MessageBar* message_;
};

}  // namespace ferrule
