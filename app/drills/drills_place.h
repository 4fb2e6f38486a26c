// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/drills/drill_desk.h"
#include "app/window/place.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QSplitter;
class QStackedWidget;

namespace ferrule {

class DetailPanel;
class DrillPicture;
class EditorPanel;
class MessageBar;
class PictureView;
class RunPanel;
class SetUpSection;
class ZoneEditor;

/// Drills: the library on the left, the set-up in the middle, on the right the drill, its runs, or the run that goes
/// on.
class DrillsPlace : public Place {
  Q_OBJECT
 public:
  DrillsPlace(const ActionSet& actions, DrillDesk::Clock clock, QWidget* parent = nullptr);

  bool act(ActionId action) override;
  void openRecord(const QString& path) override;
  void setNumbers(const Numbers& numbers) override;
  void save(QSettings& settings) const override;
  void restore(const QSettings& settings) override;

  [[nodiscard]] DrillDesk& desk() { return desk_; }
  [[nodiscard]] SetUpSection& setUp() { return *setUp_; }
  /// Adds the drills of a file to the record; says what went wrong.
  void importDrills(const QString& path);
  void exportDrill(const QString& path);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeLibrary();
  QWidget* makeTable();
  QWidget* makePanel(const ActionSet& actions);
  void refresh();
  void showLibrary();
  void showTags(const std::vector<Drill>& drills);
  void showPicture();
  void showEditor();
  void aimAt(PocketName pocket);
  [[nodiscard]] PictureView& shownPicture();
  void chooseImport();
  void chooseExport();
  void tell(const QString& sentence);

  DrillDesk desk_;
  Numbers numbers_;
  QString wantedRecord_;  ///< empty for the program's own record
  QString wantedDrill_;   ///< from the last time, until the library was read
  QSplitter* columns_;
  QLineEdit* search_;
  QComboBox* tag_;
  QListWidget* list_;
  QLabel* title_;
  QComboBox* station_;
  QLabel* stationWords_;
  QStackedWidget* pictures_;
  DrillPicture* picture_;
  SetUpSection* setUp_;
  ZoneEditor* editor_;
  std::optional<BallName> chosenBall_;  ///< in the editor
  QStackedWidget* panels_;
  DetailPanel* detail_;
  RunPanel* run_;
  EditorPanel* editing_;
  MessageBar* message_;
};

}  // namespace ferrule
