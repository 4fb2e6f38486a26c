// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/main_window.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QCloseEvent>
#include <QComboBox>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <filesystem>

#include "app/projector/projector_desk.h"
#include "app/window/about_page.h"
#include "app/window/appearance.h"
#include "app/window/help_page.h"
#include "app/window/key_page.h"
#include "app/window/languages.h"
#include "app/window/message_bar.h"
#include "app/window/own_record.h"
#include "app/window/place_list.h"
#include "app/window/recent_records.h"
#include "app/window/undo_row.h"
#include "app/words/error_sentence.h"
#include "app/words/merge_sentence.h"

namespace ferrule {

namespace {

constexpr QSize kFirstSize{1440, 900};
constexpr QSize kLeastSize{960, 600};

struct LanguageAction {
  ActionId action;
  const char* code;
};
constexpr std::array kLanguageActions{
    LanguageAction{ActionId::LanguageSystem, ""},    LanguageAction{ActionId::LanguageEnglish, "en"},
    LanguageAction{ActionId::LanguageGerman, "de"},  LanguageAction{ActionId::LanguageFrench, "fr"},
    LanguageAction{ActionId::LanguageSpanish, "es"}, LanguageAction{ActionId::LanguageChinese, "zh_CN"},
};

}  // namespace

MainWindow::MainWindow(const Openers& openers, QWidget* parent) : QMainWindow(parent), actions_(new ActionSet(this)) {
  setObjectName(QStringLiteral("mainWindow"));
  setWindowTitle(QStringLiteral("Ferrule"));
  setMinimumSize(kLeastSize);
  setAcceptDrops(true);
  auto* whole = new QWidget;
  auto* row = new QHBoxLayout(whole);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  list_ = new PlaceList;
  stack_ = new QStackedWidget;
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("windowMessage"));
  auto* column = new QVBoxLayout;
  column->setSpacing(0);
  column->addWidget(message_);
  column->addWidget(stack_, 1);
  row->addWidget(list_);
  row->addLayout(column, 1);
  setCentralWidget(whole);
  Openers shared = openers;
  if (shared.projector == nullptr) shared.projector = new ProjectorDesk(this);
  projector_ = shared.projector;
  for (const PlaceRow& place : placeRows()) {
    places_.push_back(place.make(shared, *actions_));
    stack_->addWidget(places_.back());
    connect(places_.back(), &Place::shotsWanted, this, &MainWindow::showShots);
    connect(places_.back(), &Place::playerErased, this, &MainWindow::forgetPlayer);
    connect(places_.back(), &Place::recordWanted, this, &MainWindow::openRecord);
    connect(places_.back(), &Place::placeWanted, this, &MainWindow::showPlace);
    connect(places_.back(), &Place::demoWanted, this, &MainWindow::measureDemo);
  }
  connect(list_, &PlaceList::chosen, stack_, &QStackedWidget::setCurrentIndex);
  connect(list_, &PlaceList::chosen, message_, [this] { message_->tell({}); });
  connect(list_, &PlaceList::narrowChanged, actions_->at(ActionId::NarrowPlaces), [this](bool narrow) {
    actions_->at(ActionId::NarrowPlaces)->setText(narrow ? tr("&Wide list of places") : tr("&Narrow list of places"));
  });
  connect(actions_, &ActionSet::triggered, this, &MainWindow::act);
  makeMenus();
  QApplication::instance()->installEventFilter(this);
  showPlace(QStringLiteral("review"));
}

void MainWindow::openRecord(const QString& path) {
  record_ = path;
  QSettings settings;
  noteRecentRecord(settings, path);
  for (Place* place : places_)
    place->openRecord(path);
}

void MainWindow::openFilm(const QString& path) {
  const auto rows = placeRows();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (places_[i]->openFilm(path)) showPlace(QString::fromLatin1(rows[i].name));
  }
}

void MainWindow::measureDemo(const QString& folder) {
  const auto rows = placeRows();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (places_[i]->measureDemo(folder)) showPlace(QString::fromLatin1(rows[i].name));
  }
}

void MainWindow::forgetPlayer(const QString& name) {
  for (Place* place : places_)
    place->forgetPlayer(name);
  QSettings settings;
  for (const QString& key : settings.allKeys()) {
    if (settings.value(key).toString() == name) settings.remove(key);
  }
}

void MainWindow::showShots(const ShotList& shots) {
  for (Place* place : places_)
    place->showShots(shots);
  showPlace(QStringLiteral("review"));
}

void MainWindow::showPlace(const QString& name) {
  const auto rows = placeRows();
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (name != QLatin1String(rows[i].name)) continue;
    list_->setCurrent(static_cast<int>(i));
    stack_->setCurrentIndex(static_cast<int>(i));
  }
}

bool MainWindow::isUnderWay() const {
  return std::ranges::any_of(places_, [](const Place* place) { return place->isUnderWay(); });
}

void MainWindow::goOn() {
  for (Place* place : places_)
    place->goOn();
}

void MainWindow::makeMenus() {
  const auto fill = [this](QMenu* menu, MenuId id) {
    for (QAction* action : actions_->of(id)) {
      if (action == nullptr) {
        menu->addSeparator();
      } else {
        menu->addAction(action);
      }
    }
  };
  QMenu* record = menuBar()->addMenu(menuTitle(MenuId::Record));
  fill(record, MenuId::Record);
  auto* recent = new QMenu(tr("Open &again"), record);
  recent->setObjectName(QStringLiteral("recentRecords"));
  connect(recent, &QMenu::aboutToShow, this, [this, recent] { listRecent(recent); });
  record->insertMenu(record->actions().value(1), recent);
  for (const MenuId id :
       {MenuId::Edit, MenuId::View, MenuId::Step, MenuId::Session, MenuId::Figures, MenuId::Players, MenuId::Setup}) {
    QMenu* menu = menuBar()->addMenu(menuTitle(id));
    fill(menu, id);
    if (id == MenuId::Session) fill(menu->addMenu(menuTitle(MenuId::Answers)), MenuId::Answers);
  }
  QMenu* settings = menuBar()->addMenu(tr("Se&ttings"));
  for (const MenuId id : {MenuId::SpeedUnit, MenuId::Appearance, MenuId::Language})
    fill(settings->addMenu(menuTitle(id)), id);
  fill(menuBar()->addMenu(menuTitle(MenuId::Help)), MenuId::Help);
}

void MainWindow::start(const QString& record) {
  QSettings settings;
  resize(kFirstSize.boundedTo(screen()->availableSize()));
  restoreGeometry(settings.value(QStringLiteral("window/geometry")).toByteArray());
  list_->setNarrow(settings.value(QStringLiteral("window/narrow")).toBool());
  setSpeedUnit(speedUnitFromSetting(settings.value(QStringLiteral("window/speedUnit")).toString()));
  showSettings(settings);
  for (Place* place : places_)
    place->restore(settings);
  showPlace(settings.value(QStringLiteral("window/place")).toString());
  if (!record.isEmpty()) {
    openRecord(record);
    showPlace(QStringLiteral("review"));
  }
}

void MainWindow::showSettings(const QSettings& settings) {
  switch (appearanceFromSetting(settings.value(QStringLiteral("window/appearance")).toString())) {
    case Appearance::System:
      actions_->at(ActionId::LookSystem)->setChecked(true);
      break;
    case Appearance::Light:
      actions_->at(ActionId::LookLight)->setChecked(true);
      break;
    case Appearance::Dark:
      actions_->at(ActionId::LookDark)->setChecked(true);
      break;
  }
  const QString language = settings.value(kLanguageSetting).toString();
  for (const LanguageAction& row : kLanguageActions)
    actions_->at(row.action)->setChecked(language == QLatin1String(row.code));
}

void MainWindow::act(ActionId action) {
  switch (action) {
    case ActionId::OpenRecord:
      chooseRecord();
      return;
    case ActionId::ImportRecord:
      chooseImport();
      return;
    case ActionId::Quit:
      close();
      return;
    case ActionId::NarrowPlaces:
      list_->setNarrow(!list_->isNarrow());
      return;
    case ActionId::SpeedMetres:
      setSpeedUnit(SpeedUnit::MetresPerSecond);
      return;
    case ActionId::SpeedKilometres:
      setSpeedUnit(SpeedUnit::KilometresPerHour);
      return;
    case ActionId::SpeedMiles:
      setSpeedUnit(SpeedUnit::MilesPerHour);
      return;
    case ActionId::LookSystem:
      applyAppearance(Appearance::System);
      break;
    case ActionId::LookLight:
      applyAppearance(Appearance::Light);
      break;
    case ActionId::LookDark:
      applyAppearance(Appearance::Dark);
      break;
    case ActionId::LanguageSystem:
    case ActionId::LanguageEnglish:
    case ActionId::LanguageGerman:
    case ActionId::LanguageFrench:
    case ActionId::LanguageSpanish:
    case ActionId::LanguageChinese:
      chooseLanguage(action);
      return;
    case ActionId::PlaceHelp:
      HelpPage(placeRows()[static_cast<std::size_t>(stack_->currentIndex())], this).exec();
      return;
    case ActionId::Shortcuts:
      KeyPage(this).exec();
      return;
    case ActionId::About:
      AboutPage(this).exec();
      return;
    default:
      if (auto* place = qobject_cast<Place*>(stack_->currentWidget()); place != nullptr && place->act(action)) return;
      // A rig is asked again from anywhere.
      if (action != ActionId::CheckAgain) return;
      showPlace(QStringLiteral("setup"));
      if (auto* place = qobject_cast<Place*>(stack_->currentWidget())) place->act(action);
      return;
  }
  const Appearance look = action == ActionId::LookLight  ? Appearance::Light
                          : action == ActionId::LookDark ? Appearance::Dark
                                                         : Appearance::System;
  QSettings().setValue(QStringLiteral("window/appearance"), toSetting(look));
}

void MainWindow::setSpeedUnit(SpeedUnit unit) {
  speedUnit_ = unit;
  const ActionId id = unit == SpeedUnit::MetresPerSecond     ? ActionId::SpeedMetres
                      : unit == SpeedUnit::KilometresPerHour ? ActionId::SpeedKilometres
                                                             : ActionId::SpeedMiles;
  actions_->at(id)->setChecked(true);
  for (Place* place : places_)
    place->setNumbers(Numbers(locale(), unit));
}

void MainWindow::chooseRecord() {
  QSettings settings;
  const QString folder = settings.value(QStringLiteral("window/recordFolder")).toString();
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Open a record"), folder, tr("Records (*.sqlite);;All files (*)"));
  if (path.isEmpty()) return;
  settings.setValue(QStringLiteral("window/recordFolder"), QFileInfo(path).absolutePath());
  openRecord(path);
}

void MainWindow::chooseImport() {
  const QString path =
      QFileDialog::getOpenFileName(this, tr("Take in another record"), {}, tr("Records (*.sqlite);;All files (*)"));
  if (!path.isEmpty()) importRecord(path);
}

void MainWindow::importRecord(const QString& path) {
  // Both would wait for each other to write.
  if (std::ranges::any_of(places_, [](const Place* place) { return place->isBusy(); })) {
    message_->tell(tr("Something is being measured. Take the record in when it is done."));
    return;
  }
  const QStringList recent = recentRecords(QSettings());
  const QString into = !record_.isEmpty() ? record_ : recent.isEmpty() ? ownRecord() : recent.front();
  message_->tell(tr("Taking in %1…").arg(path));
  import_.start<Result<MergeReport>>(
      [into = into.toStdString(), other = path.toStdString()](const JobControl&) {
        std::error_code ignored;
        std::filesystem::create_directories(std::filesystem::path(into).parent_path(), ignored);
        return mergeRecord(into, other);
      },
      [this, into](const Result<MergeReport>& report) {
        if (report) openRecord(into);
        message_->tell(report ? mergeSentences(*report) : errorSentence(report.error()));
      });
}

void MainWindow::chooseLanguage(ActionId action) {
  const auto* row = std::ranges::find(kLanguageActions, action, &LanguageAction::action);
  QSettings settings;
  const QString code = QString::fromLatin1(row->code);
  if (settings.value(kLanguageSetting).toString() == code) return;
  if (std::ranges::any_of(places_, [](const Place* place) { return place->isBusy(); })) {
    QMessageBox::information(this, tr("Language"),
                             tr("Something is being measured. Choose the language when it is done."));
    showSettings(settings);
    return;
  }
  settings.setValue(kLanguageSetting, code);
  emit languageChosen();
}

void MainWindow::listRecent(QMenu* menu) {
  menu->clear();
  for (const QString& path : recentRecords(QSettings())) {
    QAction* action = menu->addAction(QDir::toNativeSeparators(path).replace(QLatin1Char('&'), QLatin1String("&&")));
    connect(action, &QAction::triggered, this, [this, path] { openRecord(path); });
  }
  if (menu->isEmpty()) menu->addAction(tr("No record was opened yet"))->setEnabled(false);
}

bool MainWindow::eventFilter(QObject* object, QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool plain = key->modifiers() == Qt::NoModifier && (key->key() < Qt::Key_F1 || key->key() > Qt::Key_F35);
    const bool clicks = key->key() == Qt::Key_Space && qobject_cast<QAbstractButton*>(object) != nullptr;
    if (plain && (clicks || qobject_cast<QComboBox*>(object) != nullptr)) {
      event->accept();
      return true;
    }
  }
  // A field in which nothing waits to be taken over leaves undo to the place.
  if (event->type() == QEvent::ShortcutOverride) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const auto* field = qobject_cast<QWidget*>(object);
    const bool steps = key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo);
    const bool takesText =
        qobject_cast<QLineEdit*>(object) != nullptr || qobject_cast<QAbstractSpinBox*>(object) != nullptr;
    if (steps && takesText && !isBeingTyped(*field)) {
      event->ignore();
      return true;
    }
  }
  return QMainWindow::eventFilter(object, event);
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const QList<QUrl> files = event->mimeData()->urls();
  if (files.size() == 1 && files.front().isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QList<QUrl> files = event->mimeData()->urls();
  if (files.size() != 1 || !files.front().isLocalFile()) return;
  event->acceptProposedAction();
  const QString path = files.front().toLocalFile();
  if (path.endsWith(QLatin1String(".sqlite"), Qt::CaseInsensitive)) {
    openRecord(path);
    showPlace(QStringLiteral("review"));
  } else {
    openFilm(path);
  }
}

void MainWindow::closeEvent(QCloseEvent* event) {
  QSettings settings;
  settings.setValue(QStringLiteral("window/geometry"), saveGeometry());
  settings.setValue(QStringLiteral("window/narrow"), list_->isNarrow());
  settings.setValue(QStringLiteral("window/speedUnit"), toSetting(speedUnit_));
  settings.setValue(QStringLiteral("window/place"),
                    QString::fromLatin1(placeRows()[static_cast<std::size_t>(stack_->currentIndex())].name));
  for (Place* place : places_)
    place->save(settings);
  // Its screen is a window too: left open it would shine on over an empty room and keep the program alive.
  projector_->close();
  event->accept();
}

}  // namespace ferrule
