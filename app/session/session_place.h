// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/session/film_desk.h"
#include "app/session/hand_desk.h"
#include "app/session/live_desk.h"
#include "app/window/place.h"

class QLabel;
class QListWidget;
class QSplitter;
class QStackedWidget;

namespace ferrule {

class BallTray;
class FilmPage;
class GuestBar;
class LivePage;
class MessageBar;
class QuestionPanel;
class StartForm;
class SuggestionPanel;
class ProjectorDesk;
class SessionLight;
class TableEditor;

/// Session: what is played comes into the record by hand, from a film or from a camera. The table in the middle, who
/// plays and what happened on the right.
class SessionPlace : public Place {
  Q_OBJECT
 public:
  /// projector: that every place shares; null: one of this place's own.
  SessionPlace(const ActionSet& actions, HandDesk::Clock clock, ProjectorDesk* projector = nullptr,
               QWidget* parent = nullptr);

  bool act(ActionId action) override;
  /// Puts the balls of the session by hand where this photo shows them, with the rig in use.
  void putFromPhoto(const QString& path);
  void openRecord(const QString& path) override;
  [[nodiscard]] bool isBusy() const override;
  [[nodiscard]] bool isUnderWay() const override { return desk_.hand() != nullptr; }
  void goOn() override;
  bool openFilm(const QString& path) override;
  bool measureDemo(const QString& folder) override;
  void setNumbers(const Numbers& numbers) override;
  void save(QSettings& settings) const override;
  void restore(const QSettings& settings) override;

  [[nodiscard]] HandDesk& desk() { return desk_; }
  [[nodiscard]] FilmDesk& film() { return film_; }
  [[nodiscard]] LiveDesk& live() { return live_; }
  [[nodiscard]] ProjectorDesk& projector() { return *projector_; }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeTable();
  QWidget* makePanel(const ActionSet& actions);
  void connectFilm();
  void connectLive();
  void look(const MeasureOptions& options, std::optional<SessionId> session);
  /// Puts ended sessions aside; false, and said so, while one is under way.
  bool makeRoomForFilm();
  /// Where sessions are kept.
  [[nodiscard]] QString recordPath() const;
  void refresh();
  void showLight();
  bool actLive(ActionId action);
  void log(Outcome outcome, std::optional<MissSide> missSide = {});
  void chooseFoul();
  void choosePhoto();
  void tell(const QString& sentence);

  HandDesk desk_;
  FilmDesk film_;
  LiveDesk live_;
  ProjectorDesk* projector_;
  Numbers numbers_;
  bool goesOn_ = false;   ///< once the record is open, with what was broken off
  QString wantedRecord_;  ///< where sessions are kept; empty for the program's own record
  QStackedWidget* stack_;
  StartForm* start_;
  FilmPage* filmPage_;
  LivePage* livePage_;
  QSplitter* columns_;
  TableEditor* table_;
  BallTray* tray_;
  QLabel* title_;
  QLabel* turn_;
  QLabel* aim_;
  QLabel* ruling_;
  SuggestionPanel* suggestion_;
  SessionLight* light_;
  QListWidget* shots_;
  QuestionPanel* question_;
  QWidget* pad_;
  MessageBar* message_;
  GuestBar* guest_;
};

}  // namespace ferrule
