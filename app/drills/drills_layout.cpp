// SPDX-License-Identifier: GPL-3.0-or-later
// How the place of drills is laid out and wired.
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/drills/detail_panel.h"
#include "app/drills/drill_edits.h"
#include "app/drills/drill_picture.h"
#include "app/drills/drills_place.h"
#include "app/drills/editor_panel.h"
#include "app/drills/run_panel.h"
#include "app/drills/set_up_section.h"
#include "app/drills/zone_editor.h"
#include "app/projector/projector_desk.h"
#include "app/projector/projector_row.h"
#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/window/message_bar.h"
#include "app/window/plain_parts.h"
#include "app/window/vertical_scroll.h"
#include "app/window/wrapping_row.h"
#include "app/words/drill_words.h"
#include "app/words/error_sentence.h"

namespace ferrule {

namespace {

constexpr int kLibraryWidth_px = 240;
constexpr int kPanelWidth_px = 360;

}  // namespace

DrillsPlace::DrillsPlace(const ActionSet& actions, DrillDesk::Clock clock, ProjectorDesk* projector, QWidget* parent)
    : Place(parent), desk_(std::move(clock)), projector_(projector != nullptr ? projector : new ProjectorDesk(this)) {
  setObjectName(QStringLiteral("drillsPlace"));
  setAccessibleName(tr("Drills"));
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("drillsMessage"));
  columns_ = new QSplitter;
  columns_->setObjectName(QStringLiteral("drillsColumns"));
  columns_->setHandleWidth(1);
  columns_->addWidget(makeLibrary());
  columns_->addWidget(makeTable());
  columns_->addWidget(makePanel(actions));
  columns_->setStretchFactor(0, 0);
  columns_->setStretchFactor(1, 1);
  columns_->setStretchFactor(2, 0);
  columns_->setChildrenCollapsible(false);
  columns_->setSizes({kLibraryWidth_px, 700, kPanelWidth_px});
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(message_);
  column->addWidget(columns_, 1);

  connect(&desk_, &DrillDesk::changed, this, [this] {
    if (desk_.wasRead() && !wantedDrill_.isEmpty()) desk_.choose(std::exchange(wantedDrill_, {}).toStdString());
    refresh();
  });
  connect(&desk_, &DrillDesk::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  connect(&desk_, &DrillDesk::counted, this, [this](const std::shared_ptr<const KeptRun>& run) {
    const int tries = static_cast<int>(run->trials.size());
    tell(tries == 0 ? tr("No shot of this session was played from the set-up of this drill.")
                    : tr("%n try(s) counted: %1", nullptr, tries)
                          .arg(shareWords(scoreOf(run->terms.drill, run->trials).all, numbers_)));
    if (tries > 0) desk_.mirror(run->terms.mirroring);
  });
  connect(picture_, &DrillPicture::leavePut, &desk_, &DrillDesk::putLeave);
  connect(detail_, &DetailPanel::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  connect(detail_, &DetailPanel::removeWanted, this, [this] {
    desk_.removeDrill();
    tell(tr("Deleted; undo brings it back. Its runs stay."));
  });
  connect(detail_, &DetailPanel::exportWanted, this, &DrillsPlace::chooseExport);
  connect(detail_, &DetailPanel::editWanted, &desk_, &DrillDesk::edit);
  connect(detail_, &DetailPanel::copyWanted, this,
          [this] { desk_.copy(tr("%1, my own").arg(drillTitle(desk_.drill()))); });
  connect(editor_, &TableEditor::ballPut, this, [this](BallName ball, TablePoint near, double reach_m) {
    desk_.change(withBall(desk_.drill(), desk_.station(), ball, near, reach_m, desk_.table()));
  });
  connect(editor_, &TableEditor::ballTaken, this,
          [this](BallName ball) { desk_.change(withoutBall(desk_.drill(), desk_.station(), ball)); });
  connect(editor_, &TableEditor::ballChosen, this, [this](std::optional<BallName> ball) {
    chosenBall_ = ball;
    showEditor();
  });
  connect(editor_, &TableEditor::pocketChosen, this, &DrillsPlace::aimAt);
  connect(editor_, &ZoneEditor::zoneMoved, this, [this](TableVector by) {
    const Zone* zone = zoneOf(desk_.drill().stations[desk_.station()]);
    if (zone == nullptr) return;
    desk_.change(withZone(desk_.drill(), desk_.station(), movedZone(*zone, desk_.table().table, by)));
  });
  refresh();
}

QWidget* DrillsPlace::makeLibrary() {
  search_ = new QLineEdit;
  search_->setObjectName(QStringLiteral("findDrill"));
  search_->setAccessibleName(tr("Find a drill"));
  search_->setPlaceholderText(tr("Find a drill"));
  search_->setClearButtonEnabled(true);
  tag_ = new QComboBox;
  tag_->setObjectName(QStringLiteral("drillTag"));
  tag_->setAccessibleName(tr("Kind of drill"));
  list_ = new QListWidget;
  list_->setObjectName(QStringLiteral("drillList"));
  list_->setAccessibleName(tr("Drills"));
  list_->setFrameShape(QFrame::NoFrame);
  list_->setTextElideMode(Qt::ElideRight);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  connect(search_, &QLineEdit::textChanged, this, &DrillsPlace::showLibrary);
  connect(tag_, &QComboBox::currentIndexChanged, this, &DrillsPlace::showLibrary);
  connect(list_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* item) {
    if (item == nullptr) return;
    tell({});
    desk_.choose(item->data(Qt::UserRole).toString().toStdString());
  });
  auto* read = namedButton(tr("Import…"), "importDrills");
  read->setToolTip(tr("Take over the drills of a file"));
  connect(read, &QPushButton::clicked, this, &DrillsPlace::chooseImport);
  auto* make = namedButton(tr("New drill"), "newDrill");
  connect(make, &QPushButton::clicked, this, [this] { desk_.make(tr("My drill")); });
  auto* library = new QWidget;
  auto* column = new QVBoxLayout(library);
  column->setContentsMargins(12, 8, 8, 12);
  column->setSpacing(8);
  column->addWidget(search_);
  column->addWidget(tag_);
  column->addWidget(list_, 1);
  auto* buttons = new WrappingRow;
  buttons->setSpacing(4);
  buttons->addWidget(make);
  buttons->addWidget(read);
  column->addLayout(buttons);
  return library;
}

QWidget* DrillsPlace::makeTable() {
  title_ = new ElidedLabel;
  title_->setObjectName(QStringLiteral("drillTitle"));
  title_->setTextFormat(Qt::PlainText);
  title_->setFont(scaled(font(), 1.3, true));
  station_ = new QComboBox;
  station_->setObjectName(QStringLiteral("drillStation"));
  station_->setAccessibleName(tr("Set-up of the drill"));
  connect(station_, &QComboBox::activated, this,
          [this](int station) { desk_.showStation(static_cast<std::size_t>(station)); });
  stationWords_ = wordsLabel("stationWords");
  picture_ = new DrillPicture;
  auto* card = new Card;
  auto* cardColumn = new QVBoxLayout(card);
  cardColumn->setContentsMargins(1, 1, 1, 1);
  editor_ = new ZoneEditor;
  pictures_ = new QStackedWidget;
  pictures_->addWidget(picture_);
  pictures_->addWidget(editor_);
  cardColumn->addWidget(pictures_, 1);
  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(8, 8, 12, 12);
  column->setSpacing(8);
  column->addWidget(title_);
  auto* which = new QHBoxLayout;
  which->setSpacing(8);
  which->addWidget(station_);
  which->addWidget(stationWords_, 1);
  column->addLayout(which);
  column->addWidget(card, 1);
  light_ = new ProjectorRow(*projector_, {{"projectSetUp", tr("Project this set-up"),
                                           tr("Show on the cloth where the balls belong and where they are to rest")}});
  column->addWidget(light_);
  connect(light_, &ProjectorRow::chosenChanged, this, [this] {
    projected_.reset();
    project();
  });
  connect(projector_, &ProjectorDesk::said, this, &DrillsPlace::tell);
  setUp_ = new SetUpSection;
  column->addWidget(setUp_);
  connect(setUp_, &SetUpSection::checked, this, [this] {
    const auto& check = setUp_->check();
    desk_.setSetUpError(check ? check->largestError_m() : std::nullopt);
    picture_->setCheck(check);
  });
  connect(setUp_, &SetUpSection::tableFound, this, [this](const QString& path) {
    if (desk_.run() == nullptr) detail_->putTable(path);
  });
  // The camera that looks at the set-up sees who leans over the table.
  connect(projector_, &ProjectorDesk::changed, this,
          [this] { setUp_->watch().watchForPeople(!projector_->shown().isEmpty()); });
  connect(&setUp_->watch(), &SetUpWatch::somebodyLeans, projector_, &ProjectorDesk::setSomebodyLeans);
  connect(setUp_, &SetUpSection::said, this, &DrillsPlace::tell);
  connect(setUp_, &SetUpSection::failed, this, [this](const Error& error) { tell(errorSentence(error)); });
  return middle;
}

QWidget* DrillsPlace::makePanel(const ActionSet& actions) {
  detail_ = new DetailPanel(desk_);
  run_ = new RunPanel(desk_, actions);
  panels_ = new QStackedWidget;
  panels_->addWidget(new VerticalScroll(detail_));
  panels_->addWidget(new VerticalScroll(run_));
  editing_ = new EditorPanel(desk_, actions);
  panels_->addWidget(new VerticalScroll(editing_));
  return panels_;
}

}  // namespace ferrule
