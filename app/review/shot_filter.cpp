// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/shot_filter.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLabel>
#include <QListView>
#include <QPushButton>
#include <QSpinBox>
#include <QStringListModel>
#include <QVBoxLayout>
#include <set>

#include "app/window/card.h"
#include "app/window/inks.h"
#include "app/window/plain_parts.h"
#include "app/window/vertical_scroll.h"
#include "app/words/trade_words.h"
#include "core/geometry/units.h"
#include "core/rules/rule_set.h"

namespace ferrule {

namespace {

constexpr double kMostCut_deg = 90.0;
constexpr double kMostSpeed_mps = 15.0;
constexpr int kMostMinutes = 600;
constexpr int kRowSpacing_px = 3;
constexpr int kLeastList_px = 120;
constexpr double kMostProduct = 50.0;  ///< squares of a diamond: longer than any pot

/// After the first row, which asks for nothing. What is chosen stays so where it is among them; quiet where it is.
void setChoices(QComboBox* box, const auto& names) {
  const QVariant chosen = box->currentData();
  const QSignalBlocker quiet(box);
  while (box->count() > 1)
    box->removeItem(1);
  for (const std::string& name : names) {
    if (name.empty()) continue;
    box->addItem(QString::fromStdString(name), QString::fromStdString(name));
  }
  if (chosen.isValid()) box->setCurrentIndex(std::max(0, box->findData(chosen)));
}

}  // namespace

QString shotGroupWords(ShotGroup group) {
  switch (group) {
    case ShotGroup::Missed:
      return ShotFilter::tr("Missed pots");
    case ShotGroup::PositionLost:
      return ShotFilter::tr("Made, but position lost");
    case ShotGroup::WrongSide:
      return ShotFilter::tr("Made, but on the wrong side of the next ball");
    case ShotGroup::PoorChoice:
      return ShotFilter::tr("Another shot was better");
    case ShotGroup::LostByChoice:
      return ShotFilter::tr("Dearest choice of a frame not won");
    case ShotGroup::Fouls:
      return ShotFilter::tr("Fouls");
    case ShotGroup::Safeties:
      return ShotFilter::tr("Safeties");
    case ShotGroup::Breaks:
      return ShotFilter::tr("Breaks");
    case ShotGroup::Corrected:
      return ShotFilter::tr("Corrected by a person");
    case ShotGroup::Unsure:
      return ShotFilter::tr("Not sure: please check");
    case ShotGroup::Untracked:
      return ShotFilter::tr("Put in by hand, or not followed");
  }
  return {};
}

ShotFilter::ShotFilter(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("shotFilter"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 8, 12, 8);
  column->setSpacing(8);
  auto* form = new QFormLayout;
  form->setHorizontalSpacing(8);
  form->setVerticalSpacing(4);
  const auto named = [](auto* widget, const char* name, const QString& what) {
    widget->setObjectName(QString::fromLatin1(name));
    widget->setAccessibleName(what);
    return widget;
  };
  player_ = named(narrowBox(), "filterPlayer", tr("Player"));
  player_->addItem(tr("Everybody"));
  form->addRow(tr("&Player"), player_);
  group_ = named(narrowBox(), "filterGroup", tr("Which shots"));
  group_->addItem(tr("All shots"));
  for (const ShotGroup group : kShotGroups)
    group_->addItem(shotGroupWords(group), static_cast<int>(group));
  form->addRow(tr("Sho&ts"), group_);
  side_ = named(narrowBox(), "filterSide", tr("Miss side"));
  side_->addItem(tr("Thick or thin"));
  side_->addItem(tr("Too thick"), static_cast<int>(MissSide::Under));
  side_->addItem(tr("Too thin"), static_cast<int>(MissSide::Over));
  form->addRow(tr("Mi&ss side"), side_);
  cutSide_ = named(narrowBox(), "filterCutSide", tr("Side of the cut"));
  cutSide_->addItem(tr("Cut to the left or right"));
  cutSide_->addItem(tr("Cut to the left"), static_cast<int>(CutSide::Left));
  cutSide_->addItem(tr("Cut to the right"), static_cast<int>(CutSide::Right));
  form->addRow(tr("Cut si&de"), cutSide_);
  const auto range = [&](const QString& label, QDoubleSpinBox*& least, QDoubleSpinBox*& most, double top, double step,
                         const QString& unit, const char* leastName, const char* mostName, const QString& leastWords,
                         const QString& mostWords) {
    auto* row = new QHBoxLayout;
    least = named(new QDoubleSpinBox, leastName, leastWords);
    most = named(new QDoubleSpinBox, mostName, mostWords);
    for (QDoubleSpinBox* box : {least, most}) {
      box->setRange(0.0, top);
      box->setSingleStep(step);
      box->setDecimals(step < 1.0 ? 1 : 0);
      box->setSuffix(unit);
      box->setKeyboardTracking(false);
      row->addWidget(box, 1);
      connect(box, &QDoubleSpinBox::valueChanged, this, &ShotFilter::changed);
    }
    most->setValue(top);
    auto* words = new QLabel(label);
    words->setBuddy(least);
    form->addRow(words, row);
  };
  range(tr("C&ut"), leastCut_, mostCut_, kMostCut_deg, 5.0, QChar(0x00B0), "filterLeastCut", "filterMostCut",
        tr("Least cut"), tr("Most cut"));
  range(tr("Sp&eed"), leastSpeed_, mostSpeed_, kMostSpeed_mps, 0.5, tr(" m/s"), "filterLeastSpeed", "filterMostSpeed",
        tr("Least speed"), tr("Most speed"));
  product_ = named(new QDoubleSpinBox, "filterMostProduct", tr("Longest pot"));
  product_->setRange(0.0, kMostProduct);
  product_->setDecimals(0);
  product_->setKeyboardTracking(false);
  product_->setValue(kMostProduct);
  product_->setSuffix(QStringLiteral(" \u25c7\u00b2"));
  product_->setToolTip(
      tr("Way of the cue ball times way of the object ball, in diamonds: of straight pots, 2 is short and 12 long"));
  form->addRow(tr("&Longest"), product_);
  connect(product_, &QDoubleSpinBox::valueChanged, this, &ShotFilter::changed);
  pocket_ = named(narrowBox(), "filterPocket", tr("Pocket"));
  pocket_->addItem(tr("Every pocket"));
  for (const PocketName pocket : kPocketNames)
    pocket_->addItem(atStart(pocketWords(pocket)), static_cast<int>(pocket));
  form->addRow(tr("P&ocket"), pocket_);
  game_ = named(narrowBox(), "filterGame", tr("Game"));
  game_->addItem(tr("Every game"));
  for (const Game game : kGames) {
    const QString text = QString::fromUtf8(toText(game));
    game_->addItem(atStart(gameWords(text.toStdString())), text);
  }
  form->addRow(tr("&Game"), game_);
  table_ = named(narrowBox(), "filterTable", tr("Table"));
  table_->addItem(tr("Every table"));
  form->addRow(tr("Ta&ble"), table_);
  opponent_ = named(narrowBox(), "filterOpponent", tr("Who else played"));
  opponent_->addItem(tr("Whoever else played"));
  form->addRow(tr("&With"), opponent_);
  tag_ = named(narrowBox(), "filterTag", tr("Tag"));
  tag_->addItem(tr("With or without a tag"));
  form->addRow(tr("T&ag"), tag_);
  occasion_ = named(narrowBox(), "filterOccasion", tr("Occasion"));
  occasion_->addItem(tr("Practice, match or lesson"));
  occasion_->addItem(tr("Practice"), static_cast<int>(Occasion::Practice));
  occasion_->addItem(tr("Match"), static_cast<int>(Occasion::Match));
  occasion_->addItem(tr("Lesson"), static_cast<int>(Occasion::Lesson));
  form->addRow(tr("Occasio&n"), occasion_);
  minutes_ = named(new QSpinBox, "filterMinutes", tr("Minutes into the session"));
  minutes_->setRange(0, kMostMinutes);
  minutes_->setSingleStep(10);
  minutes_->setKeyboardTracking(false);
  minutes_->setSpecialValueText(tr("From the first shot"));
  minutes_->setSuffix(tr(" min on"));
  form->addRow(tr("F&rom"), minutes_);
  connect(minutes_, &QSpinBox::valueChanged, this, &ShotFilter::changed);
  const auto day = [&](QCheckBox*& check, QDateEdit*& edit, const QString& words, const QDate& date,
                       const char* checkName, const char* editName, const QString& checkWords,
                       const QString& editWords) {
    check = named(new QCheckBox(words), checkName, checkWords);
    edit = named(new QDateEdit(date), editName, editWords);
    edit->setCalendarPopup(true);
    edit->setEnabled(false);
    form->addRow(check, edit);
    connect(check, &QCheckBox::toggled, this, [this, edit](bool on) {
      edit->setEnabled(on);
      emit changed();
    });
    connect(edit, &QDateEdit::dateChanged, this, &ShotFilter::changed);
  };
  const QDate today = QDate::currentDate();
  day(since_, from_, tr("S&ince"), QDate(today.year(), today.month(), 1), "filterSince", "filterFrom",
      tr("Only since a day"), tr("First day"));
  day(until_, to_, tr("Until"), today, "filterUntil", "filterTo", tr("Only until a day"), tr("Last day"));
  auto* conditions = new QWidget;
  conditions->setLayout(form);
  form->setContentsMargins(0, 0, 0, 0);
  auto* scroll = new VerticalScroll(conditions);
  scroll->setObjectName(QStringLiteral("filterConditions"));
  scroll->setAccessibleName(tr("Conditions"));
  scroll->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
  column->addWidget(scroll);

  auto* row = new QHBoxLayout;
  title_ = new QLabel;
  title_->setObjectName(QStringLiteral("filterTitle"));
  title_->setTextFormat(Qt::PlainText);
  title_->setWordWrap(true);
  row->addWidget(title_, 1);
  auto* close = named(new QPushButton(tr("All sessions")), "closeFilter", tr("Back to all sessions"));
  row->addWidget(close, 0, Qt::AlignTop);
  column->addLayout(row);
  rows_ = named(new QListView, "filteredShots", tr("Shots that were asked for"));
  rows_->setUniformItemSizes(true);
  rows_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  rows_->setFrameShape(QFrame::NoFrame);
  rows_->setTextElideMode(Qt::ElideRight);
  rows_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  rows_->setSpacing(kRowSpacing_px);
  model_ = new QStringListModel(this);
  rows_->setModel(model_);
  rows_->setMinimumHeight(kLeastList_px);
  column->addWidget(rows_, 1);

  for (QComboBox* combo : {player_, group_, side_, cutSide_, pocket_, game_, table_, opponent_, tag_, occasion_}) {
    connect(combo, &QComboBox::currentIndexChanged, this, &ShotFilter::changed);
  }
  connect(close, &QPushButton::clicked, this, &ShotFilter::closed);
  connect(rows_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& index) {
    if (index.isValid()) emit chosen(list_.shots[static_cast<std::size_t>(index.row())]);
  });
}

void ShotFilter::setPlayers(const std::vector<Player>& players) {
  std::vector<std::string> names;
  for (const Player& player : players)
    names.push_back(player.name);
  setChoices(player_, names);
}

void ShotFilter::setTags(const std::vector<std::string>& tags) {
  setChoices(tag_, tags);
}

void ShotFilter::setSessions(const std::vector<SessionSummary>& sessions) {
  std::set<std::string> tables;
  std::set<std::string> players;
  for (const SessionSummary& session : sessions) {
    tables.insert(session.tableName);
    players.insert(session.players.begin(), session.players.end());
  }
  setChoices(table_, tables);
  setChoices(opponent_, players);
}

void ShotFilter::setList(const ShotList& list) {
  list_ = list;
  QStringList rows;
  rows.reserve(static_cast<qsizetype>(list.shots.size()));
  for (const ListedShot& shot : list.shots)
    rows << QStringLiteral("%1 \u00b7 %2").arg(outcomeWords(shot.outcome), shot.words);
  const QString count = tr("%Ln shot(s)", nullptr, static_cast<int>(list.shots.size()));
  title_->setText(list.title.isEmpty() ? count : QStringLiteral("%1 (%2)").arg(list.title, count));
  model_->setStringList(rows);
  if (!rows.isEmpty()) rows_->setCurrentIndex(model_->index(0));
}

void ShotFilter::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
}

HistoryFilter ShotFilter::filter() const {
  HistoryFilter filter;
  if (group_->currentData().isValid()) filter.group = static_cast<ShotGroup>(group_->currentData().toInt());
  if (side_->currentData().isValid()) filter.missSide = static_cast<MissSide>(side_->currentData().toInt());
  if (leastCut_->value() > 0.0) filter.leastCut_rad = radiansFromDegrees(leastCut_->value());
  if (mostCut_->value() < kMostCut_deg) filter.mostCut_rad = radiansFromDegrees(mostCut_->value());
  if (leastSpeed_->value() > 0.0) filter.leastSpeed_mps = leastSpeed_->value();
  if (mostSpeed_->value() < kMostSpeed_mps) filter.mostSpeed_mps = mostSpeed_->value();
  if (product_->value() < kMostProduct) filter.mostProduct = product_->value();
  if (pocket_->currentData().isValid()) filter.pocket = static_cast<PocketName>(pocket_->currentData().toInt());
  if (game_->currentData().isValid()) filter.game = game_->currentData().toString().toStdString();
  if (table_->currentData().isValid()) filter.table = table_->currentData().toString().toStdString();
  if (opponent_->currentData().isValid()) filter.opponent = opponent_->currentData().toString().toStdString();
  if (tag_->currentData().isValid()) filter.tag = tag_->currentData().toString().toStdString();
  if (cutSide_->currentData().isValid()) filter.cutSide = static_cast<CutSide>(cutSide_->currentData().toInt());
  if (occasion_->currentData().isValid()) filter.occasion = static_cast<Occasion>(occasion_->currentData().toInt());
  if (minutes_->value() > 0) filter.leastMinutes = minutes_->value();
  if (until_->isChecked()) filter.until_ms = to_->date().addDays(1).startOfDay().toMSecsSinceEpoch();
  if (since_->isChecked()) filter.from_ms = from_->date().startOfDay().toMSecsSinceEpoch();
  return filter;
}

std::string ShotFilter::player() const {
  return player_->currentData().toString().toStdString();
}

int ShotFilter::current() const {
  return rows_->currentIndex().isValid() ? rows_->currentIndex().row() : -1;
}

bool ShotFilter::step(int shots) {
  const int next = current() + shots;
  if (next < 0 || next >= model_->rowCount()) return false;
  rows_->setCurrentIndex(model_->index(next));
  return true;
}

void ShotFilter::focusConditions() {
  player_->setFocus();
}

}  // namespace ferrule
