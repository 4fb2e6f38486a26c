// SPDX-License-Identifier: GPL-3.0-or-later
// How the Review place is put together; what it does is in review_place.cpp.
#include <QButtonGroup>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>
#include <QTreeView>
#include <QVBoxLayout>

#include "app/picture/film_view.h"
#include "app/picture/plan_view.h"
#include "app/progress/progress_service.h"
#include "app/review/compare_view.h"
#include "app/review/legend.h"
#include "app/review/picture_splitter.h"
#include "app/review/remarks_section.h"
#include "app/review/review_place.h"
#include "app/review/shot_filter.h"
#include "app/review/shot_panel.h"
#include "app/review/shot_row_delegate.h"
#include "app/review/shot_tree_model.h"
#include "app/review/time_line.h"
#include "app/session/table_editor.h"
#include "app/window/card.h"
#include "app/window/ink_icon.h"
#include "app/window/inks.h"
#include "app/window/message_bar.h"
#include "app/window/tool_button.h"
#include "app/window/work_strip.h"
#include "app/window/wrapping_row.h"

namespace ferrule {

namespace {

constexpr int kListWidth_px = 350;
constexpr int kPanelWidth_px = 344;

QLabel* quietLabel() {
  auto* label = new QuietLabel;
  label->setTextFormat(Qt::PlainText);
  return label;
}

}  // namespace

ReviewPlace::ReviewPlace(const Openers& openers, const ActionSet& actions, QWidget* parent)
    : Place(parent),
      desk_(openers.record, openers.film),
      clips_(openers.film),
      demoRecord_(openers.demoRecord),
      demoFolder_(openers.demoFolder) {
  setObjectName(QStringLiteral("reviewPlace"));
  setAccessibleName(tr("Review"));
  model_ = new ShotTreeModel(this);
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("message"));

  tree_ = new QTreeView;
  tree_->setObjectName(QStringLiteral("shotTree"));
  tree_->setAccessibleName(tr("Sessions, frames and shots"));
  tree_->setModel(model_);
  tree_->setItemDelegate(new ShotRowDelegate(tree_));
  tree_->setUniformRowHeights(true);
  tree_->setHeaderHidden(true);
  tree_->setFrameShape(QFrame::NoFrame);
  tree_->setIndentation(10);
  tree_->setAllColumnsShowFocus(true);
  tree_->setMinimumWidth(200);
  tree_->header()->setStretchLastSection(false);
  tree_->header()->setSectionResizeMode(ShotTreeModel::What, QHeaderView::Stretch);
  tree_->header()->setSectionResizeMode(ShotTreeModel::Result, QHeaderView::ResizeToContents);
  tree_->header()->setSectionResizeMode(ShotTreeModel::Speed, QHeaderView::ResizeToContents);

  panel_ = new ShotPanel;
  remarks_ = new RemarksSection;
  auto* details = new QWidget;
  auto* detailColumn = new QVBoxLayout(details);
  detailColumn->setContentsMargins(0, 0, 0, 0);
  detailColumn->setSpacing(1);
  detailColumn->addWidget(panel_, 1);
  detailColumn->addWidget(remarks_);
  columns_ = new QSplitter;
  columns_->setObjectName(QStringLiteral("columns"));
  columns_->setHandleWidth(1);
  filter_ = new ShotFilter;
  lists_ = new QStackedWidget;
  lists_->addWidget(tree_);
  lists_->addWidget(filter_);
  columns_->addWidget(lists_);
  columns_->addWidget(makePictures(actions));
  columns_->addWidget(details);
  columns_->setStretchFactor(0, 0);
  columns_->setStretchFactor(1, 1);
  columns_->setStretchFactor(2, 0);
  columns_->setCollapsible(1, false);
  columns_->setSizes({kListWidth_px, 800, kPanelWidth_px});

  stack_ = new QStackedWidget;
  stack_->addWidget(makeEmpty(actions));
  stack_->addWidget(columns_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  work_ = new WorkStrip(actions);
  work_->watch(judging_.job(), tr("Suggestions are worked out anew from what was corrected."));
  work_->watch(clips_.job(), tr("The clip is written."));
  column->addWidget(message_);
  column->addWidget(work_);
  column->addWidget(stack_, 1);
  setMode(PictureMode::Plan);
  connectDesk();
  connectViews();
  connectFilter();
  connectCorrections();
  connectPlaces();
  connectRemarks();
  connectClips();
  connectSound();
  showFilmState();

  const auto showMode = [this, &actions] {
    actions.at(ActionId::ShowPlan)->setChecked(mode_ == PictureMode::Plan);
    actions.at(ActionId::ShowFilm)->setChecked(mode_ == PictureMode::Film);
    actions.at(ActionId::ShowBoth)->setChecked(mode_ == PictureMode::Both);
  };
  connect(this, &Place::actionsChanged, this, showMode);
  connect(&desk_.playhead(), &Playhead::playingChanged, this, [play = actions.at(ActionId::Play)](bool playing) {
    play->setIcon(inkIcon(playing ? QStringLiteral("pause") : QStringLiteral("play")));
  });
  showMode();
}

QWidget* ReviewPlace::makeHeader(const ActionSet& actions) {
  auto* header = new QWidget;
  auto* row = new QHBoxLayout(header);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  title_ = new ElidedLabel;
  title_->setObjectName(QStringLiteral("sessionTitle"));
  title_->setTextFormat(Qt::PlainText);
  title_->setFont(scaled(font(), 1.3, true));
  title_->setMinimumWidth(40);
  title_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  subtitle_ = quietLabel();
  subtitle_->setMinimumWidth(40);
  subtitle_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  // The buttons keep one row as long as there is one; then the words are cut first.
  row->addWidget(title_, 3);
  row->addWidget(subtitle_, 2, Qt::AlignVCenter);
  // Below one another where pictures are narrow and words long.
  auto* modes = new WrappingRow;
  modes->setSpacing(8);
  modes->addWidget(toolButton(actions.at(ActionId::FilterShots)));
  for (const ActionId id : {ActionId::ShowPlan, ActionId::ShowFilm, ActionId::ShowBoth}) {
    QToolButton* button = toolButton(actions.at(id));
    button->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    modes->addWidget(button);
  }
  row->addLayout(modes);
  return header;
}

QWidget* ReviewPlace::makeTransport(const ActionSet& actions) {
  auto* transport = new QWidget;
  auto* row = new QHBoxLayout(transport);
  row->setContentsMargins(12, 0, 12, 4);
  row->setSpacing(0);
  row->addWidget(toolButton(actions.at(ActionId::PlayList)));
  for (const ActionId id : {ActionId::ShotBack, ActionId::EventBack, ActionId::ImageBack, ActionId::Play,
                            ActionId::ImageOn, ActionId::EventOn, ActionId::ShotOn}) {
    row->addWidget(toolButton(actions.at(id)));
  }
  row->addSpacing(16);
  row->addWidget(new Legend);
  moment_ = quietLabel();
  moment_->setObjectName(QStringLiteral("moment"));
  moment_->setFont(withTabularFigures(font()));
  moment_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
  moment_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  row->addWidget(moment_, 1);
  return transport;
}

QWidget* ReviewPlace::makePictures(const ActionSet& actions) {
  plan_ = new PlanView;
  editor_ = new TableEditor;
  editor_->setObjectName(QStringLiteral("placeEditor"));
  planStack_ = new QStackedWidget;
  planStack_->addWidget(plan_);
  planStack_->addWidget(editor_);
  film_ = new FilmView;
  filmWords_ = quietLabel();
  filmWords_->setObjectName(QStringLiteral("filmWords"));
  filmWords_->setWordWrap(true);
  filmWords_->setAlignment(Qt::AlignCenter);
  filmButton_ = new QPushButton(tr("Find the film…"));
  filmButton_->setObjectName(QStringLiteral("findFilm"));
  auto* filmMissing = new QWidget;
  auto* missing = new QVBoxLayout(filmMissing);
  missing->setContentsMargins(24, 24, 24, 24);
  missing->addStretch(1);
  missing->addWidget(filmWords_);
  missing->addWidget(filmButton_, 0, Qt::AlignHCenter);
  missing->addStretch(1);
  filmStack_ = new QStackedWidget;
  filmStack_->addWidget(film_);
  filmStack_->addWidget(filmMissing);

  pictures_ = new PictureSplitter;
  pictures_->setObjectName(QStringLiteral("pictures"));
  pictures_->setHandleWidth(5);
  pictures_->setChildrenCollapsible(false);
  pictures_->addWidget(planStack_);
  pictures_->addWidget(filmStack_);
  pictures_->setSizes({500, 500});
  compare_ = new CompareView;
  pictureStack_ = new QStackedWidget;
  pictureStack_->addWidget(pictures_);
  pictureStack_->addWidget(compare_);
  timeLine_ = new TimeLine;

  auto* pictureCard = new Card;
  auto* cardColumn = new QVBoxLayout(pictureCard);
  cardColumn->setContentsMargins(1, 1, 1, 4);
  cardColumn->setSpacing(0);
  cardColumn->addWidget(pictureStack_, 1);
  cardColumn->addWidget(makeTransport(actions));
  auto* timeCard = new Card;
  auto* timeColumn = new QVBoxLayout(timeCard);
  timeColumn->setContentsMargins(1, 1, 1, 1);
  timeColumn->addWidget(timeLine_);

  auto* middle = new QWidget;
  auto* column = new QVBoxLayout(middle);
  column->setContentsMargins(12, 8, 12, 12);
  column->setSpacing(8);
  column->addWidget(makeHeader(actions));
  column->addWidget(pictureCard, 1);
  column->addWidget(timeCard);
  return middle;
}

QWidget* ReviewPlace::makeEmpty(const ActionSet& actions) {
  auto* empty = new QWidget;
  empty->setObjectName(QStringLiteral("emptyReview"));
  auto* column = new QVBoxLayout(empty);
  column->setContentsMargins(24, 24, 24, 24);
  column->setSpacing(12);
  column->addStretch(1);
  auto* words = new QLabel(tr("Open a record to look at its shots."));
  words->setAlignment(Qt::AlignCenter);
  words->setFont(scaled(font(), 1.2));
  column->addWidget(words);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(8);
  auto* open = new QPushButton(tr("Open a record…"));
  open->setObjectName(QStringLiteral("openRecordFromEmpty"));
  open->setDefault(true);
  connect(open, &QPushButton::clicked, actions.at(ActionId::OpenRecord), &QAction::trigger);
  buttons->addStretch(1);
  buttons->addWidget(open);
  if (!demoRecord_.isEmpty()) {
    auto* demo = new QPushButton(tr("Look at the demo"));
    demo->setObjectName(QStringLiteral("openDemo"));
    connect(demo, &QPushButton::clicked, this, [this] {
      openRecord(demoRecord_);
      emit recordWanted(demoRecord_);
    });
    buttons->addWidget(demo);
  } else if (!demoFolder_.isEmpty()) {
    auto* demo = new QPushButton(tr("Measure the demo film"));
    demo->setObjectName(QStringLiteral("measureDemo"));
    connect(demo, &QPushButton::clicked, this, [this] { emit demoWanted(demoFolder_); });
    buttons->addWidget(demo);
  }
  buttons->addStretch(1);
  column->addLayout(buttons);
  column->addStretch(1);
  return empty;
}

}  // namespace ferrule
