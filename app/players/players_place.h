// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/players/people_desk.h"
#include "app/window/place.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListView;
class QSplitter;
class QStackedWidget;

namespace ferrule {

class ConsentSection;
class ErasePanel;
class MessageBar;
class NoteSection;
class PeopleListModel;
class PersonForm;
class UndoRow;

/// Players: who is in the record, what they consented to, and notes about them.
class PlayersPlace : public Place {
  Q_OBJECT
 public:
  PlayersPlace(const ActionSet& actions, PeopleDesk::Clock clock, QWidget* parent = nullptr);

  bool act(ActionId action) override;
  void openRecord(const QString& path) override;
  void setNumbers(const Numbers& numbers) override;
  void save(QSettings& settings) const override;
  void restore(const QSettings& settings) override;

  [[nodiscard]] PeopleDesk& desk() { return desk_; }
  /// Writes the chosen player's shots, consents and notes into a folder. Says where they lie, or what went wrong.
  void exportTo(const QString& folder);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeList(const ActionSet& actions);
  QWidget* makePanel(const ActionSet& actions);
  QWidget* makeTakingOut(const ActionSet& actions);
  QWidget* makeEmpty(const ActionSet& actions);
  void connectParts();
  void read(const QString& path);
  void addPlayer();
  void chooseExport();
  void filter();
  void refresh();
  void refreshList();
  void refreshPerson();
  void refreshSteps();

  PeopleDesk desk_;
  Numbers numbers_;
  QString wantedRecord_;
  QString wantedGroup_;
  QString stamp_;
  PlayerId shown_;
  bool nameWanted_ = false;  ///< the next person that is shown was just added

  MessageBar* message_;
  QStackedWidget* stack_;
  QLabel* emptyWords_;
  QSplitter* columns_;
  QLineEdit* search_;
  QComboBox* group_;
  PeopleListModel* model_;
  QListView* list_;
  QLabel* nobody_;
  QStackedWidget* panel_;
  QLabel* title_;
  QLabel* played_;
  UndoRow* steps_;
  PersonForm* form_;
  ConsentSection* consents_;
  NoteSection* notes_;
  ErasePanel* erase_;
};

}  // namespace ferrule
