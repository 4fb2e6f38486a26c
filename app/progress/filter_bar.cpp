// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/progress/filter_bar.h"

#include <QComboBox>
#include <QDateEdit>
#include <QSignalBlocker>

#include "app/window/wrapping_row.h"
#include "app/words/drill_words.h"
#include "app/words/joining.h"
#include "app/words/trade_words.h"
#include "core/progress/make_rate.h"

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
  opponent_ = box(name + QStringLiteral("Opponent"), tr("Opponent"), row);
  drill_ = box(name + QStringLiteral("Drill"), tr("Drill"), row);
  pocket_ = box(name + QStringLiteral("Pocket"), tr("Pocket"), row);
  pocket_->addItem(tr("Every pocket"));
  for (const PocketName pocket : kPocketNames)
    pocket_->addItem(atStart(pocketWords(pocket)), static_cast<int>(pocket));
  cut_ = box(name + QStringLiteral("Cut"), tr("Cut"), row);
  way_ = box(name + QStringLiteral("Way"), tr("Way of the cue ball"), row);
  setChoices({});
  setNumbers(Numbers());
  connect(period_, &QComboBox::currentIndexChanged, this, &FilterBar::choosePeriod);
  for (QComboBox* combo : {player_, table_, game_, occasion_, opponent_, drill_, pocket_, cut_, way_})
    connect(combo, &QComboBox::currentIndexChanged, this, &FilterBar::changed);
}

void FilterBar::choosePeriod() {
  const bool own = period_->currentData() == OwnDays;
  from_->setVisible(own);
  to_->setVisible(own);
  emit changed();
}

void FilterBar::showPeriodOnly() {
  for (QComboBox* combo : {table_, game_, occasion_, opponent_, drill_, pocket_, cut_, way_})
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

void FilterBar::setChoices(const ProgressColumn& column) {
  const auto named = [](const std::vector<std::string>& names, auto&& shown) {
    std::vector<std::pair<QString, QVariant>> entries;
    for (const std::string& name : names)
      entries.emplace_back(shown(name), QString::fromStdString(name));
    return entries;
  };
  const auto asWritten = [](const std::string& name) { return QString::fromStdString(name); };
  refill(table_, tr("Every table"), named(column.tables, asWritten));
  refill(game_, tr("Every game"),
         named(column.games, [](const std::string& game) { return atStart(gameWords(game)); }));
  refill(opponent_, tr("Every opponent"), named(column.opponents, asWritten));
  std::vector<std::pair<QString, QVariant>> drills;
  for (const Drill& drill : column.drills)
    drills.emplace_back(drillTitle(drill), QString::fromStdString(drill.key));
  refill(drill_, tr("With and without drills"), drills);
}

void FilterBar::setNumbers(const Numbers& numbers) {
  std::vector<std::pair<QString, QVariant>> entries;
  double from_rad = 0.0;
  for (std::size_t i = 0; i < kCutBands_rad.size(); ++i) {
    entries.emplace_back(
        tr("Cut %1 to %2", "two angles").arg(numbers.degrees(from_rad, 0), numbers.degrees(kCutBands_rad[i], 0)),
        static_cast<int>(i));
    from_rad = kCutBands_rad[i];
  }
  refill(cut_, tr("Every cut"), entries);
  entries.clear();
  const auto widths = [&](double value) { return numbers.fixed(value, 1); };
  entries.emplace_back(tr("Shorter than %1 widths").arg(widths(kDistanceBands_widths.front())), 0);
  for (std::size_t i = 1; i < kDistanceBands_widths.size(); ++i)
    entries.emplace_back(
        tr("%1 to %2 widths").arg(widths(kDistanceBands_widths[i - 1]), widths(kDistanceBands_widths[i])),
        static_cast<int>(i));
  entries.emplace_back(tr("Longer than %1 widths").arg(widths(kDistanceBands_widths.back())),
                       static_cast<int>(kDistanceBands_widths.size()));
  refill(way_, tr("Every distance"), entries);
}

void FilterBar::setPlayer(const QString& player) {
  const int at = player_->findText(player, Qt::MatchExactly);
  if (at >= 0) player_->setCurrentIndex(at);
}

void FilterBar::forgetPlayer(const QString& player) {
  const QSignalBlocker quiet(player_);
  const int at = player_->findText(player, Qt::MatchExactly);
  if (at >= 0) player_->removeItem(at);
  const QSignalBlocker alsoQuiet(opponent_);
  const int opponent = opponent_->findData(player);
  if (opponent >= 0) opponent_->removeItem(opponent);
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
  if (opponent_->currentData().isValid()) filter.opponent = opponent_->currentData().toString().toStdString();
  if (drill_->currentData().isValid()) filter.drill = drill_->currentData().toString().toStdString();
  if (pocket_->currentData().isValid()) filter.pocket = static_cast<PocketName>(pocket_->currentData().toInt());
  if (cut_->currentData().isValid()) {
    const auto band = static_cast<std::size_t>(cut_->currentData().toInt());
    if (band > 0) filter.leastCut_rad = kCutBands_rad[band - 1];
    filter.mostCut_rad = kCutBands_rad[band];
  }
  if (way_->currentData().isValid()) {
    const auto band = static_cast<std::size_t>(way_->currentData().toInt());
    if (band > 0) filter.leastCueWay_widths = kDistanceBands_widths[band - 1];
    if (band < kDistanceBands_widths.size()) filter.mostCueWay_widths = kDistanceBands_widths[band];
  }
  return wanted;
}

QString FilterBar::shotWords() const {
  QStringList parts;
  for (const QComboBox* combo : {opponent_, drill_, pocket_, cut_, way_}) {
    if (combo->currentData().isValid()) parts << combo->currentText();
  }
  return listOf(parts);
}

}  // namespace ferrule
