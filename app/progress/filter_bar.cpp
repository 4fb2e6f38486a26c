// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/filter_bar.h"

#include <QComboBox>
#include <QDateEdit>
#include <QSignalBlocker>

#include "app/window/wrapping_row.h"
#include "app/words/trade_words.h"

namespace ferrule {

namespace {

enum Period { AllTime, LastMonth, LastQuarter, ThisMonth, MonthBefore, OwnDays };

QComboBox* box(const QString& name, const QString& what, QLayout* row) {
  auto* combo = new QComboBox;
  combo->setObjectName(name);
  combo->setAccessibleName(what);
  combo->setToolTip(what);
  combo->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  row->addWidget(combo);
  return combo;
}

/// Fills a box whose first entry lets everything pass, and keeps what was chosen where it is still there.
void refill(QComboBox* combo, const QString& all, const std::vector<std::pair<QString, QVariant>>& entries) {
  const QSignalBlocker quiet(combo);
  const QVariant before = combo->currentData();
  combo->clear();
  combo->addItem(all);
  for (const auto& [words, data] : entries)
    combo->addItem(words, data);
  const int at = before.isValid() ? combo->findData(before) : 0;
  if (at < 0) {
    combo->addItem(before.toString(), before);  // chosen before this player was
    combo->setCurrentIndex(combo->count() - 1);
  } else {
    combo->setCurrentIndex(at);
  }
}

std::int64_t startOf(QDate day) {
  return day.startOfDay().toMSecsSinceEpoch();
}

}  // namespace

FilterBar::FilterBar(const QString& name, QWidget* parent) : QWidget(parent) {
  setObjectName(name);
  auto* row = new WrappingRow(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  player_ = box(name + QStringLiteral("Player"), tr("Player"), row);
  period_ = box(name + QStringLiteral("Period"), tr("Period"), row);
  period_->addItem(tr("All time"), AllTime);
  period_->addItem(tr("Last 30 days"), LastMonth);
  period_->addItem(tr("Last 90 days"), LastQuarter);
  period_->addItem(tr("This month"), ThisMonth);
  period_->addItem(tr("Last month"), MonthBefore);
  period_->addItem(tr("From day to day"), OwnDays);
  from_ = new QDateEdit(QDate::currentDate().addMonths(-1));
  to_ = new QDateEdit(QDate::currentDate());
  for (QDateEdit* day : {from_, to_}) {
    day->setCalendarPopup(true);
    day->setVisible(false);
    row->addWidget(day);
    connect(day, &QDateEdit::dateChanged, this, &FilterBar::changed);
  }
  from_->setObjectName(name + QStringLiteral("From"));
  from_->setAccessibleName(tr("First day"));
  from_->setToolTip(from_->accessibleName());
  to_->setObjectName(name + QStringLiteral("To"));
  to_->setAccessibleName(tr("Last day"));
  to_->setToolTip(to_->accessibleName());
  table_ = box(name + QStringLiteral("Table"), tr("Table"), row);
  game_ = box(name + QStringLiteral("Game"), tr("Game"), row);
  occasion_ = box(name + QStringLiteral("Occasion"), tr("Practice or match"), row);
  occasion_->addItem(tr("Practice and matches"));
  occasion_->addItem(tr("Practice"), static_cast<int>(Occasion::Practice));
  occasion_->addItem(tr("Matches"), static_cast<int>(Occasion::Match));
  occasion_->addItem(tr("Lessons"), static_cast<int>(Occasion::Lesson));
  setChoices({}, {});
  connect(period_, &QComboBox::currentIndexChanged, this, &FilterBar::choosePeriod);
  for (QComboBox* combo : {player_, table_, game_, occasion_})
    connect(combo, &QComboBox::currentIndexChanged, this, &FilterBar::changed);
}

void FilterBar::choosePeriod() {
  const bool own = period_->currentData() == OwnDays;
  from_->setVisible(own);
  to_->setVisible(own);
  emit changed();
}

void FilterBar::showPeriodOnly() {
  for (QComboBox* combo : {table_, game_, occasion_})
    combo->hide();
}

void FilterBar::setPlayers(const std::vector<Player>& players) {
  const QSignalBlocker quiet(player_);
  const QString before = player();
  player_->clear();
  for (const Player& player : players)
    player_->addItem(QString::fromStdString(player.name));
  setPlayer(before);
  if (player_->currentIndex() < 0 && player_->count() > 0) player_->setCurrentIndex(0);
}

void FilterBar::setChoices(const std::vector<std::string>& tables, const std::vector<std::string>& games) {
  std::vector<std::pair<QString, QVariant>> entries;
  for (const std::string& table : tables)
    entries.emplace_back(QString::fromStdString(table), QString::fromStdString(table));
  refill(table_, tr("Every table"), entries);
  entries.clear();
  for (const std::string& game : games)
    entries.emplace_back(atStart(gameWords(game)), QString::fromStdString(game));
  refill(game_, tr("Every game"), entries);
}

void FilterBar::setPlayer(const QString& player) {
  const int at = player_->findText(player, Qt::MatchExactly);
  if (at >= 0) player_->setCurrentIndex(at);
}

void FilterBar::forgetPlayer(const QString& player) {
  const QSignalBlocker quiet(player_);
  const int at = player_->findText(player, Qt::MatchExactly);
  if (at >= 0) player_->removeItem(at);
}

QString FilterBar::player() const {
  return player_->currentText();
}

ProgressWanted FilterBar::wanted() const {
  ProgressWanted wanted;
  wanted.player = player().toStdString();
  HistoryFilter& filter = wanted.filter;
  const QDate today = QDate::currentDate();
  const QDate month(today.year(), today.month(), 1);
  switch (static_cast<Period>(period_->currentData().toInt())) {
    case AllTime:
      break;
    case LastMonth:
      filter.from_ms = startOf(today.addDays(-29));
      break;
    case LastQuarter:
      filter.from_ms = startOf(today.addDays(-89));
      break;
    case ThisMonth:
      filter.from_ms = startOf(month);
      break;
    case MonthBefore:
      filter.from_ms = startOf(month.addMonths(-1));
      filter.until_ms = startOf(month);
      break;
    case OwnDays:
      filter.from_ms = startOf(from_->date());
      filter.until_ms = startOf(to_->date().addDays(1));
      break;
  }
  if (table_->currentData().isValid()) filter.table = table_->currentData().toString().toStdString();
  if (game_->currentData().isValid()) filter.game = game_->currentData().toString().toStdString();
  if (occasion_->currentData().isValid()) filter.occasion = static_cast<Occasion>(occasion_->currentData().toInt());
  return wanted;
}

}  // namespace ferrule
