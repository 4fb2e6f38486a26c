// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drills/drills_place.h"

#include <QComboBox>
#include <QFileDialog>
#include <QLineEdit>
#include <QListWidget>
#include <QSettings>
#include <QSignalBlocker>
#include <QSplitter>
#include <QStackedWidget>
#include <set>

#include "app/drills/detail_panel.h"
#include "app/drills/drill_edits.h"
#include "app/drills/drill_picture.h"
#include "app/drills/editor_panel.h"
#include "app/drills/run_panel.h"
#include "app/drills/set_up_section.h"
#include "app/drills/zone_editor.h"
#include "app/projector/projector_desk.h"
#include "app/projector/projector_row.h"
#include "app/window/message_bar.h"
#include "app/window/own_record.h"
#include "app/words/drill_words.h"
#include "app/words/error_sentence.h"
#include "app/words/trade_words.h"
#include "core/drills/drill_file.h"

namespace ferrule {

namespace {

constexpr int kRow_px = 28;

/// What a person types finds a drill by its name, its text or one of its tags.
bool isFound(const Drill& drill, const QString& words, const QString& tag) {
  const bool tagged = tag.isEmpty() || std::ranges::find(drill.tags, tag.toStdString()) != drill.tags.end();
  if (!tagged) return false;
  QString all = drillTitle(drill) + QLatin1Char('\n') + drillText(drill);
  for (const std::string& each : drill.tags)
    all += QLatin1Char('\n') + tagWords(each);
  return all.contains(words, Qt::CaseInsensitive);
}

}  // namespace

bool DrillsPlace::act(ActionId action) {
  switch (action) {
    case ActionId::Undo:
      desk_.undo();
      return true;
    case ActionId::Redo:
      desk_.redo();
      return true;
    case ActionId::LogMade:
      desk_.log(true);
      return true;
    case ActionId::LogThick:
      desk_.log(false, MissSide::Under);
      return true;
    case ActionId::LogThin:
      desk_.log(false, MissSide::Over);
      return true;
    case ActionId::LogMissed:
      desk_.log(false);
      return true;
    case ActionId::LogScratch:
    case ActionId::LogFoul:
      desk_.log(false, {}, true);
      return true;
    case ActionId::EndSession:
      desk_.endRun();
      return true;
    case ActionId::ZoomIn:
      shownPicture().zoomIn();
      return true;
    case ActionId::ZoomOut:
      shownPicture().zoomOut();
      return true;
    case ActionId::ZoomFit:
      shownPicture().fit();
      return true;
    default:
      return false;
  }
}

void DrillsPlace::refresh() {
  const bool runs = desk_.run() != nullptr;
  showLibrary();
  showPicture();
  const bool edits = desk_.isEditing();
  panels_->setCurrentIndex(runs ? 1 : edits ? 2 : 0);
  pictures_->setCurrentIndex(edits ? 1 : 0);
  if (runs) {
    run_->refresh(numbers_);
  } else if (edits) {
    showEditor();
    editing_->refresh();
  } else {
    detail_->refresh(numbers_);
  }
  for (QWidget* widget : std::initializer_list<QWidget*>{search_, tag_, list_})
    widget->setEnabled(!runs && !edits);
  emit actionsChanged();
}

void DrillsPlace::showLibrary() {
  const std::vector<Drill> drills = desk_.library();
  showTags(drills);
  const QSignalBlocker quiet(list_);
  std::vector<const Drill*> found;
  for (const Drill& drill : drills) {
    if (isFound(drill, search_->text().trimmed(), tag_->currentData().toString())) found.push_back(&drill);
  }
  // Rows stay where they are right: whoever goes through the list stands on one of them.
  while (list_->count() > static_cast<int>(found.size()))
    delete list_->takeItem(list_->count() - 1);
  int current = -1;
  for (std::size_t i = 0; i < found.size(); ++i) {
    const int row = static_cast<int>(i);
    if (row == list_->count()) list_->addItem(new QListWidgetItem);
    QListWidgetItem* item = list_->item(row);
    item->setText(drillTitle(*found[i]));
    item->setSizeHint({0, kRow_px});
    item->setToolTip(drillText(*found[i]));
    item->setData(Qt::UserRole, QString::fromStdString(found[i]->key));
    if (found[i]->key == desk_.drill().key) current = row;
  }
  // Where the drill that is looked at was filtered out, any row can still be chosen.
  list_->setCurrentRow(current);
}

void DrillsPlace::showTags(const std::vector<Drill>& drills) {
  std::set<std::string> tags;
  for (const Drill& drill : drills)
    tags.insert(drill.tags.begin(), drill.tags.end());
  if (tag_->count() == static_cast<int>(tags.size()) + 1) return;
  const QSignalBlocker quiet(tag_);
  const QString tag = tag_->currentData().toString();
  tag_->clear();
  tag_->addItem(tr("All drills"), QString());
  for (const std::string& each : tags)
    tag_->addItem(tagWords(each), QString::fromStdString(each));
  tag_->setCurrentIndex(std::max(0, tag_->findData(tag)));
}

void DrillsPlace::showPicture() {
  const Drill played = desk_.played();
  const DrillStation& station = played.stations[desk_.station()];
  title_->setText(drillTitle(played));
  const QSignalBlocker quiet(station_);
  station_->clear();
  for (std::size_t i = 0; i < played.stations.size(); ++i) {
    station_->addItem(tr("Set-up %1").arg(numbers_.whole(static_cast<long long>(i) + 1)));
  }
  stationWords_->setText(atStart(stationWords(station, desk_.table(), numbers_)));
  station_->setCurrentIndex(static_cast<int>(desk_.station()));
  station_->setVisible(played.stations.size() > 1);
  station_->setEnabled(desk_.run() == nullptr);
  picture_->setTable(desk_.table());
  picture_->setStation(station, setUpOf(station, desk_.table(), desk_.seed()));
  picture_->setLeave(desk_.leave(), desk_.run() != nullptr);
  setUp_->setStation(station, desk_.table());
  setUp_->setVisible(!desk_.isEditing());
  // The rest places of the run that goes on, else of the last one that was played like this.
  std::vector<TablePoint> leaves;
  const auto add = [&](const KeptRun& run) {
    for (const DrillTrial& trial : run.trials) {
      if (trial.station == desk_.station() && trial.leave) leaves.push_back(*trial.leave);
    }
  };
  if (desk_.run() != nullptr) {
    add(*desk_.run());
  } else {
    const auto runs = desk_.runsHere();
    const auto last = std::find_if(runs.rbegin(), runs.rend(), [&](const KeptRun* run) {
      return run->terms.mirroring == desk_.mirroring() && run->terms.table.table == desk_.table().table;
    });
    if (last != runs.rend()) add(**last);
  }
  picture_->setLeaves(leaves);
  project();
}

void DrillsPlace::project() {
  const auto wanted = light_->chosen();
  const Drill played = desk_.played();
  const DrillStation& station = played.stations[desk_.station()];
  if (!wanted || projected_ == std::pair(station, desk_.seed())) return;
  projected_ = {station, desk_.seed()};
  // Light must lie true on the table under the projector, whatever table the drill is looked at on.
  const auto table = ProjectorDesk::tableInUse();
  projector_->show(light_->lightName(*wanted), lightOf(station, table.value_or(desk_.table()), desk_.seed()));
}

void DrillsPlace::showEditor() {
  const DrillStation& station = desk_.drill().stations[desk_.station()];
  const Position balls = setUpOf(station, desk_.table(), desk_.seed());
  if (chosenBall_ && ballIn(balls, *chosenBall_) == nullptr) chosenBall_.reset();
  editor_->setTable(desk_.table());
  editor_->setBalls(balls);
  editor_->setStation(station);
  const DrillGoal& goal = station.goals.empty() ? DrillGoal{} : station.goals.front();
  const bool target = goal.ball && chosenBall_.value_or(*goal.ball) == *goal.ball;
  editor_->setAim(target ? goal.ball : chosenBall_, target ? goal.pocket : std::nullopt);
}

void DrillsPlace::aimAt(PocketName pocket) {
  const DrillStation& station = desk_.drill().stations[desk_.station()];
  const auto ball = chosenBall_ && !chosenBall_->isCueBall() ? chosenBall_ : firstObjectBall(station);
  if (ball) desk_.change(withTarget(desk_.drill(), desk_.station(), *ball, pocket));
}

PictureView& DrillsPlace::shownPicture() {
  return desk_.isEditing() ? static_cast<PictureView&>(*editor_) : *picture_;
}

void DrillsPlace::chooseImport() {
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Import drills"), {}, tr("Drills (*.json);;All files (*)"));
  if (!path.isEmpty()) importDrills(path);
}

void DrillsPlace::importDrills(const QString& path) {
  const auto drills = readDrills(path.toStdString());
  if (!drills) {
    tell(errorSentence(drills.error()));
    return;
  }
  for (const Drill& drill : *drills) {
    const auto faults = faultsOf(drill, desk_.table());
    if (faults.empty()) continue;
    tell(tr("Nothing of %1 was taken over: in \"%2\" %3").arg(path, drillTitle(drill), faultSentence(faults.front())));
    return;
  }
  desk_.add(*drills);
  tell(tr("%n drill(s) taken over.", nullptr, static_cast<int>(drills->size())));
}

void DrillsPlace::chooseExport() {
  const QString path = QFileDialog::getSaveFileName(this, tr("Export the drill"), drillTitle(desk_.drill()) + ".json",
                                                    tr("Drills (*.json);;All files (*)"));
  if (!path.isEmpty()) exportDrill(path);
}

void DrillsPlace::exportDrill(const QString& path) {
  Drill drill = desk_.drill();
  // Whoever reads the file has the words too.
  drill.title = drillTitle(drill).toStdString();
  drill.text = drillText(drill).toStdString();
  const auto done = writeDrills(path.toStdString(), std::span(&drill, 1));
  tell(done ? tr("Written to %1.").arg(path) : errorSentence(done.error()));
}

void DrillsPlace::openRecord(const QString& path) {
  wantedRecord_ = path;
  if (isVisible()) desk_.openRecord(path);
}

void DrillsPlace::showEvent(QShowEvent* event) {
  Place::showEvent(event);
  // No file is made for someone who never comes here.
  const QString wanted = wantedRecord_.isEmpty() ? ownRecord() : wantedRecord_;
  desk_.openRecord(wanted);
}

void DrillsPlace::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  picture_->setNumbers(numbers);
  setUp_->setNumbers(numbers);
  refresh();
}

void DrillsPlace::save(QSettings& settings) const {
  settings.setValue(QStringLiteral("drills/columns"), columns_->saveState());
  settings.setValue(QStringLiteral("drills/record"), wantedRecord_);
  settings.setValue(QStringLiteral("drills/drill"), QString::fromStdString(desk_.drill().key));
  settings.setValue(QStringLiteral("drills/search"), search_->text());
}

void DrillsPlace::restore(const QSettings& settings) {
  columns_->restoreState(settings.value(QStringLiteral("drills/columns")).toByteArray());
  wantedRecord_ = settings.value(QStringLiteral("drills/record")).toString();
  wantedDrill_ = settings.value(QStringLiteral("drills/drill")).toString();
  search_->setText(settings.value(QStringLiteral("drills/search")).toString());
  desk_.choose(wantedDrill_.toStdString());
}

void DrillsPlace::tell(const QString& sentence) {
  message_->tell(sentence);
}

}  // namespace ferrule
