// SPDX-License-Identifier: GPL-3.0-or-later
// How the Players place is put together; what it does is in players_place.cpp.
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QToolButton>

#include "app/players/consent_section.h"
#include "app/players/erase_panel.h"
#include "app/players/note_section.h"
#include "app/players/people_list_model.h"
#include "app/players/person_form.h"
#include "app/players/players_place.h"
#include "app/window/card.h"
#include "app/window/empty_place.h"
#include "app/window/inks.h"
#include "app/window/message_bar.h"
#include "app/window/tool_button.h"
#include "app/window/undo_row.h"
#include "app/window/vertical_scroll.h"
#include "app/window/wrapping_row.h"

namespace ferrule {

namespace {

constexpr int kListWidth_px = 316;
constexpr int kMostWidth_px = 760;

/// A part of the panel on a card of its own, under its title.
QWidget* titled(const QString& title, QWidget* part) {
  auto* card = new Card;
  auto* column = new QVBoxLayout(card);
  column->setContentsMargins(16, 12, 16, 16);
  column->setSpacing(12);
  auto* words = new QLabel(title);
  words->setFont(scaled(words->font(), 1.1, true));
  column->addWidget(words);
  column->addWidget(part);
  return card;
}

}  // namespace

PlayersPlace::PlayersPlace(const ActionSet& actions, PeopleDesk::Clock clock, QWidget* parent)
    : Place(parent), desk_(std::move(clock)) {
  setObjectName(QStringLiteral("playersPlace"));
  setAccessibleName(tr("Players"));
  message_ = new MessageBar;
  message_->setObjectName(QStringLiteral("playersMessage"));
  columns_ = new QSplitter;
  columns_->setObjectName(QStringLiteral("playerColumns"));
  columns_->setHandleWidth(1);
  columns_->addWidget(makeList(actions));
  columns_->addWidget(makePanel(actions));
  columns_->setStretchFactor(0, 0);
  columns_->setStretchFactor(1, 1);
  columns_->setChildrenCollapsible(false);
  columns_->setSizes({kListWidth_px, 900});
  stack_ = new QStackedWidget;
  stack_->addWidget(makeEmpty(actions));
  stack_->addWidget(columns_);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(message_);
  column->addWidget(stack_, 1);
  connectParts();
  refresh();
}

QWidget* PlayersPlace::makeList(const ActionSet& actions) {
  auto* left = new QWidget;
  left->setMinimumWidth(220);
  auto* column = new QVBoxLayout(left);
  column->setContentsMargins(12, 8, 12, 12);
  column->setSpacing(8);
  search_ = new QLineEdit;
  search_->setObjectName(QStringLiteral("searchPlayers"));
  search_->setAccessibleName(tr("Search for a player or group"));
  search_->setPlaceholderText(tr("Search for a player or group"));
  search_->setClearButtonEnabled(true);
  column->addWidget(search_);
  group_ = new QComboBox;
  group_->setObjectName(QStringLiteral("groupFilter"));
  group_->setAccessibleName(tr("Group"));
  group_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  group_->setMinimumContentsLength(8);
  column->addWidget(group_);
  model_ = new PeopleListModel(this);
  list_ = new QListView;
  list_->setObjectName(QStringLiteral("playerList"));
  list_->setAccessibleName(tr("Players of the record"));
  list_->setModel(model_);
  list_->setItemDelegate(new PersonRowDelegate(list_));
  list_->setUniformItemSizes(true);
  list_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  list_->setFrameShape(QFrame::NoFrame);
  column->addWidget(list_, 1);
  nobody_ = new QuietLabel(tr("Nobody passes the search and the group."));
  nobody_->setObjectName(QStringLiteral("nobodyPasses"));
  nobody_->setWordWrap(true);
  column->addWidget(nobody_);
  auto* buttons = new WrappingRow;
  buttons->setSpacing(4);
  for (const ActionId id : {ActionId::AddPlayer, ActionId::AddGuest}) {
    QToolButton* button = raisedButton(actions.at(id));
    button->setToolButtonStyle(Qt::ToolButtonTextOnly);
    buttons->addWidget(button);
  }
  column->addLayout(buttons);
  return left;
}

QWidget* PlayersPlace::makePanel(const ActionSet& actions) {
  title_ = new ElidedLabel;
  title_->setObjectName(QStringLiteral("playerTitle"));
  title_->setTextFormat(Qt::PlainText);
  title_->setFont(scaled(font(), 1.3, true));
  title_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  played_ = new QuietLabel;
  played_->setObjectName(QStringLiteral("played"));
  played_->setTextFormat(Qt::PlainText);
  steps_ = new UndoRow(actions, QStringLiteral("Players"));
  form_ = new PersonForm;
  consents_ = new ConsentSection;
  notes_ = new NoteSection;
  erase_ = new ErasePanel;

  auto* person = new QWidget;
  person->setMaximumWidth(kMostWidth_px);
  auto* column = new QVBoxLayout(person);
  column->setContentsMargins(16, 8, 16, 16);
  column->setSpacing(12);
  auto* head = new QHBoxLayout;
  head->setSpacing(4);
  head->addWidget(title_, 1);
  head->addWidget(steps_);
  column->addLayout(head);
  column->addWidget(played_);
  column->addWidget(titled(tr("Person"), form_));
  column->addWidget(titled(tr("Consent"), consents_));
  column->addWidget(titled(tr("Notes"), notes_));
  column->addWidget(titled(tr("Export and erase"), makeTakingOut(actions)));
  column->addStretch(1);
  auto* scroll = new VerticalScroll(person);
  scroll->setObjectName(QStringLiteral("playerScroll"));

  auto* none = new QuietLabel(tr("Choose a player on the left."));
  none->setAlignment(Qt::AlignCenter);
  panel_ = new QStackedWidget;
  panel_->addWidget(none);
  panel_->addWidget(scroll);
  return panel_;
}

QWidget* PlayersPlace::makeTakingOut(const ActionSet& actions) {
  auto* part = new QWidget;
  auto* column = new QVBoxLayout(part);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(12);
  QToolButton* button = raisedButton(actions.at(ActionId::ExportPlayer));
  column->addWidget(button, 0, Qt::AlignLeft);
  column->addWidget(erase_);
  return part;
}

QWidget* PlayersPlace::makeEmpty(const ActionSet& actions) {
  emptyWords_ = new QLabel;
  emptyWords_->setObjectName(QStringLiteral("emptyPlayersWords"));
  emptyWords_->setFont(scaled(font(), 1.2));
  auto* add = new QPushButton(tr("Add a player"));
  add->setObjectName(QStringLiteral("addFirstPlayer"));
  QWidget* empty = emptyPlace(emptyWords_, add, actions.at(ActionId::AddPlayer));
  empty->setObjectName(QStringLiteral("emptyPlayers"));
  return empty;
}

}  // namespace ferrule
