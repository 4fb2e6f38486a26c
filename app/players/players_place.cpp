// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/players_place.h"

#include <QComboBox>
#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QSettings>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <set>

#include "app/players/consent_section.h"
#include "app/players/erase_panel.h"
#include "app/players/note_section.h"
#include "app/players/people_list_model.h"
#include "app/players/people_words.h"
#include "app/players/person_form.h"
#include "app/window/message_bar.h"
#include "app/window/own_record.h"
#include "app/window/undo_row.h"
#include "app/words/erase_sentence.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

/// Consents are given for days.
UtcMilliseconds startOfDay(UtcMilliseconds time) {
  return QDateTime::fromMSecsSinceEpoch(time).toLocalTime().date().startOfDay().toMSecsSinceEpoch();
}

}  // namespace

void PlayersPlace::connectParts() {
  connect(&desk_, &PeopleDesk::changed, this, &PlayersPlace::refresh);
  connect(&desk_, &PeopleDesk::told, message_, &MessageBar::tell);
  // What this place wrote is no news to it.
  connect(&desk_, &PeopleDesk::kept, this, [this] { stamp_ = stampOf(desk_.recordPath()); });
  connect(search_, &QLineEdit::textChanged, this, &PlayersPlace::filter);
  connect(group_, &QComboBox::currentIndexChanged, this, &PlayersPlace::filter);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
    if (index.isValid()) desk_.choose(PlayerId{index.data(PeopleListModel::PlayerRole).toLongLong()});
  });
  connect(form_, &PersonForm::changed, &desk_, &PeopleDesk::update);
  connect(form_, &PersonForm::joinWanted, &desk_, &PeopleDesk::joinTo);
  connect(form_, &PersonForm::told, message_, &MessageBar::tell);
  connect(consents_, &ConsentSection::noted, &desk_, &PeopleDesk::noteConsent);
  connect(consents_, &ConsentSection::told, message_, &MessageBar::tell);
  connect(notes_, &NoteSection::added, &desk_, &PeopleDesk::addNote);
  connect(notes_, &NoteSection::removed, &desk_, &PeopleDesk::removeNote);
  connect(notes_, &NoteSection::authorChanged, this, [this] { desk_.setAuthor(notes_->author()); });
  connect(erase_, &ErasePanel::previewWanted, &desk_, &PeopleDesk::askWhatErasingMeans);
  connect(erase_, &ErasePanel::eraseWanted, &desk_, &PeopleDesk::erase);
  connect(&desk_, &PeopleDesk::previewed, this, [this](const ErasePreview& preview) {
    if (preview.player.id == desk_.chosen()) erase_->show(preview);
  });
  connect(&desk_, &PeopleDesk::exported, this,
          [this](const QStringList& files) { message_->tell(tr("Written: %1").arg(listOf(files))); });
  connect(&desk_, &PeopleDesk::erased, this, [this](const EraseReport& report) {
    erase_->close();
    message_->tell(eraseReportWords(report).join(QLatin1Char('\n')));
    emit playerErased(QString::fromStdString(report.erased.player.name));
  });
}

void PlayersPlace::exportTo(const QString& folder) {
  desk_.exportTo(folder);
}

bool PlayersPlace::act(ActionId action) {
  switch (action) {
    case ActionId::Undo:
      desk_.undo();
      return true;
    case ActionId::Redo:
      desk_.redo();
      return true;
    case ActionId::AddPlayer:
      addPlayer();
      return true;
    case ActionId::AddGuest:
      desk_.addGuest(tr("Guest"));
      return true;
    case ActionId::ExportPlayer:
      chooseExport();
      return true;
    case ActionId::FilterShots:
      search_->setFocus();
      search_->selectAll();
      return true;
    default:
      return false;
  }
}

void PlayersPlace::chooseExport() {
  if (desk_.person() == nullptr) {
    message_->tell(tr("Choose the player who is to be exported."));
    return;
  }
  const QString folder = QFileDialog::getExistingDirectory(this, tr("Export the player to a folder"));
  if (!folder.isEmpty()) exportTo(folder);
}

void PlayersPlace::addPlayer() {
  // A free name to be typed over.
  const QString start = tr("New player");
  QString name = start;
  const auto isTaken = [&](const PersonRow& row) { return row.details.player.name == name.toStdString(); };
  for (int number = 2; std::ranges::any_of(desk_.people(), isTaken); ++number)
    name = QStringLiteral("%1 %2").arg(start).arg(number);
  PersonDetails details;
  details.player.name = name.toStdString();
  const QString group = group_->currentData().toString();
  if (!group.isEmpty()) details.groups = {group.toStdString()};
  search_->clear();
  nameWanted_ = true;
  desk_.add(details);
}

void PlayersPlace::openRecord(const QString& path) {
  wantedRecord_ = path;
  if (isVisible()) read(path);
}

void PlayersPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  const QString wanted = wantedRecord_.isEmpty() ? ownRecord() : wantedRecord_;
  if (wanted != desk_.recordPath() || stampOf(wanted) != stamp_) read(wanted);
}

void PlayersPlace::read(const QString& path) {
  stamp_ = stampOf(path);
  message_->tell({});
  desk_.openRecord(path);
}

void PlayersPlace::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  refresh();
}

void PlayersPlace::filter() {
  wantedGroup_ = group_->currentData().toString();
  model_->setFilter(search_->text().trimmed(), wantedGroup_);
  refreshList();
}

void PlayersPlace::refresh() {
  if (desk_.wasRead()) stack_->setCurrentIndex(desk_.people().empty() ? 0 : 1);
  emptyWords_->setText(tr("Nobody is in %1 yet. Add a player first: name, groups and consent; then sessions and "
                          "films know them by name.")
                           .arg(desk_.recordPath()));
  std::set<QString> groups;
  for (const PersonRow& row : desk_.people()) {
    for (const std::string& group : row.details.groups)
      groups.insert(QString::fromStdString(group));
  }
  {
    const QSignalBlocker quiet(group_);
    group_->clear();
    group_->addItem(tr("Every group"), QString());
    for (const QString& group : groups)
      group_->addItem(group, group);
    group_->setCurrentIndex(std::max(group_->findData(wantedGroup_), 0));
  }
  model_->setPeople(desk_.people(), startOfDay(desk_.now()));
  model_->setFilter(search_->text().trimmed(), group_->currentData().toString());
  refreshList();
  refreshPerson();
  refreshSteps();
}

void PlayersPlace::refreshList() {
  const int row = model_->rowOf(desk_.chosen());
  const QSignalBlocker quiet(list_->selectionModel());
  if (row >= 0) {
    list_->setCurrentIndex(model_->index(row));
    list_->scrollTo(model_->index(row));
  } else {
    list_->selectionModel()->clear();
  }
  // The blocked signal would have redrawn the row.
  list_->viewport()->update();
  nobody_->setVisible(model_->rowCount() == 0);
}

void PlayersPlace::refreshPerson() {
  const Person* person = desk_.person();
  panel_->setCurrentIndex(person == nullptr ? 0 : 1);
  if (person == nullptr) return;
  title_->setText(QString::fromStdString(person->details.player.name));
  played_->setText(playedWords(*person, numbers_));
  form_->show(person->details, desk_.people());
  consents_->show(*person, startOfDay(desk_.now()), numbers_);
  notes_->show(*person, numbers_);
  if (person->details.player.id != shown_) erase_->close();
  shown_ = person->details.player.id;
  if (nameWanted_) form_->focusName();
  nameWanted_ = false;
}

void PlayersPlace::refreshSteps() {
  steps_->setSteps(desk_.undoName(), desk_.redoName());
}

void PlayersPlace::save(QSettings& settings) const {
  settings.setValue(QStringLiteral("players/record"), wantedRecord_);
  settings.setValue(QStringLiteral("players/chosen"), QVariant::fromValue<qlonglong>(desk_.chosen().value));
  settings.setValue(QStringLiteral("players/search"), search_->text());
  settings.setValue(QStringLiteral("players/group"), wantedGroup_);
  settings.setValue(QStringLiteral("players/author"), desk_.author());
  settings.setValue(QStringLiteral("players/columns"), columns_->saveState());
}

void PlayersPlace::restore(const QSettings& settings) {
  wantedRecord_ = settings.value(QStringLiteral("players/record")).toString();
  desk_.choose(PlayerId{settings.value(QStringLiteral("players/chosen")).toLongLong()});
  wantedGroup_ = settings.value(QStringLiteral("players/group")).toString();
  search_->setText(settings.value(QStringLiteral("players/search")).toString());
  notes_->setAuthor(settings.value(QStringLiteral("players/author")).toString());
  columns_->restoreState(settings.value(QStringLiteral("players/columns")).toByteArray());
}

}  // namespace ferrule
