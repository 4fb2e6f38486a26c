// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QMainWindow>
#include <vector>

#include "app/window/background_job.h"
#include "app/window/places.h"

class QMenu;
class QSettings;
class QStackedWidget;

namespace ferrule {

class MessageBar;
class PlaceList;
class ProjectorDesk;

/// Composes the list of places, the places and the menus, and nothing else.
class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  explicit MainWindow(const Openers& openers, QWidget* parent = nullptr);

  /// Opens this record, or with an empty path the one that was open last.
  void start(const QString& record);
  [[nodiscard]] ActionSet& actions() { return *actions_; }
  /// By its name in placeRows(); an unknown name changes nothing.
  void showPlace(const QString& name);
  /// Takes what another record holds into the one that is open, and says what came of it.
  void importRecord(const QString& path);
  /// Whether a place has something under way that a new window takes up by goOn().
  [[nodiscard]] bool isUnderWay() const;
  void goOn();

 signals:
  /// Another language was chosen, and stands in the settings.
  void languageChosen();

 protected:
  void closeEvent(QCloseEvent* event) override;
  /// One file may be dropped on the window: a record is opened, anything else is a film.
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  /// Keys without a modifier that a button or a list of choices needs for itself are no shortcuts there.
  bool eventFilter(QObject* object, QEvent* event) override;

 private:
  void makeMenus();
  void act(ActionId action);
  void setSpeedUnit(SpeedUnit unit);
  void chooseRecord();
  void chooseImport();
  void openRecord(const QString& path);
  void openFilm(const QString& path);
  void measureDemo(const QString& folder);
  void forgetPlayer(const QString& name);
  void showShots(const ShotList& shots);
  void showSettings(const QSettings& settings);
  void chooseLanguage(ActionId action);
  void listRecent(QMenu* menu);

  ActionSet* actions_;
  PlaceList* list_;
  QStackedWidget* stack_;
  ProjectorDesk* projector_;
  std::vector<Place*> places_;
  MessageBar* message_;
  QString record_;  ///< that was opened last; empty: none yet
  SpeedUnit speedUnit_ = SpeedUnit::MetresPerSecond;
  BackgroundJob import_;
};

}  // namespace ferrule
