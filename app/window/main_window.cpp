// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/main_window.h"

#include <QAbstractButton>
#include <QApplication>
#include <QCloseEvent>
#include <QComboBox>
#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenuBar>
#include <QMessageBox>
#include <QScreen>
#include <QSettings>
#include <QStackedWidget>

#include "app/window/appearance.h"
#include "app/window/key_page.h"
#include "app/window/place_list.h"

namespace ferrule {

namespace {

constexpr QSize kFirstSize{1440, 900};
constexpr QSize kLeastSize{960, 600};

}  // namespace

MainWindow::MainWindow(const Openers& openers, QWidget* parent) : QMainWindow(parent), actions_(new ActionSet(this)) {
  setObjectName(QStringLiteral("mainWindow"));
  setWindowTitle(QStringLiteral("Ferrule"));
  setMinimumSize(kLeastSize);
  auto* whole = new QWidget;
  auto* row = new QHBoxLayout(whole);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  list_ = new PlaceList;
  stack_ = new QStackedWidget;
  row->addWidget(list_);
  row->addWidget(stack_, 1);
  setCentralWidget(whole);
  for (const PlaceRow& place : placeRows()) {
    places_.push_back(place.make(openers, *actions_));
    stack_->addWidget(places_.back());
    connect(places_.back(), &Place::shotsWanted, this, &MainWindow::showShots);
    connect(places_.back(), &Place::recordWanted, this, &MainWindow::openRecord);
  }
  connect(list_, &PlaceList::chosen, stack_, &QStackedWidget::setCurrentIndex);
  connect(list_, &PlaceList::narrowChanged, actions_->at(ActionId::NarrowPlaces), [this](bool narrow) {
    actions_->at(ActionId::NarrowPlaces)->setText(narrow ? tr("&Wide list of places") : tr("&Narrow list of places"));
  });
  connect(actions_, &ActionSet::triggered, this, &MainWindow::act);
  makeMenus();
  QApplication::instance()->installEventFilter(this);
  showPlace(QStringLiteral("review"));
}

void MainWindow::openRecord(const QString& path) {
  for (Place* place : places_)
    place->openRecord(path);
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
  for (const MenuId id :
       {MenuId::Record, MenuId::Edit, MenuId::View, MenuId::Step, MenuId::Session, MenuId::Figures, MenuId::Setup})
    fill(menuBar()->addMenu(menuTitle(id)), id);
  QMenu* settings = menuBar()->addMenu(tr("Se&ttings"));
  for (const MenuId id : {MenuId::SpeedUnit, MenuId::Appearance})
    fill(settings->addMenu(menuTitle(id)), id);
  fill(menuBar()->addMenu(menuTitle(MenuId::Help)), MenuId::Help);
}

void MainWindow::start(const QString& record) {
  QSettings settings;
  resize(kFirstSize.boundedTo(screen()->availableSize()));
  restoreGeometry(settings.value(QStringLiteral("window/geometry")).toByteArray());
  list_->setNarrow(settings.value(QStringLiteral("window/narrow")).toBool());
  setSpeedUnit(speedUnitFromSetting(settings.value(QStringLiteral("window/speedUnit")).toString()));
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
  for (Place* place : places_)
    place->restore(settings);
  showPlace(settings.value(QStringLiteral("window/place")).toString());
  if (!record.isEmpty()) {
    openRecord(record);
    showPlace(QStringLiteral("review"));
  }
}

void MainWindow::act(ActionId action) {
  switch (action) {
    case ActionId::OpenRecord:
      chooseRecord();
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
    case ActionId::Shortcuts:
      KeyPage(this).exec();
      return;
    case ActionId::About:
      showAbout();
      return;
    default:
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

void MainWindow::showAbout() {
  QMessageBox::about(this, tr("About Ferrule"),
                     tr("Ferrule %1 turns film of a cue-sports table into measured shots.\n\n"
                        "Free software under the GNU General Public License, version 3 or later. "
                        "It comes without any warranty.")
                         .arg(QCoreApplication::applicationVersion()));
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
  return QMainWindow::eventFilter(object, event);
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
  event->accept();
}

}  // namespace ferrule
