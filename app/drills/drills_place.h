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
class ProjectorDesk;
class ProjectorRow;
class RunPanel;
class SetUpSection;
class ZoneEditor;

/// Drills: the library on the left, the set-up in the middle, on the right the drill, its runs, or the run that goes
/// on.
class DrillsPlace : public Place {
  Q_OBJECT
 public:
  /// projector: that every place shares; null: one of this place's own.
  DrillsPlace(const ActionSet& actions, DrillDesk::Clock clock, ProjectorDesk* projector = nullptr,
              QWidget* parent = nullptr);

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
  /// Sends the set-up onto the cloth where that is wanted.
  void project();
  void aimAt(PocketName pocket);
  [[nodiscard]] PictureView& shownPicture();
  void chooseImport();
  void chooseExport();
  void tell(const QString& sentence);

  DrillDesk desk_;
  ProjectorDesk* projector_;
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
  ProjectorRow* light_;
  /// Station and seed that the light shows.
  std::optional<std::pair<DrillStation, std::uint64_t>> projected_;
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
