// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/review/event_list_model.h"

#include "app/words/trade_words.h"

namespace ferrule {

namespace {

/// Times that differ by less are one: the record keeps whole microseconds, films whole milliseconds.
constexpr double kSlack_s = 0.0005;

}  // namespace

EventListModel::EventListModel(QObject* parent) : QAbstractTableModel(parent) {}

void EventListModel::setShot(const ShotReading& shot) {
  beginResetModel();
  strike_s_ = shot.strike_s;
  rows_.clear();
  rows_.push_back({shot.strike_s, tr("Strike")});
  for (const ShotEvent& event : shot.events)
    rows_.push_back({event.time_s, eventWords(event)});
  rows_.push_back({shot.rest_s, tr("Every ball rests")});
  endResetModel();
}

void EventListModel::clear() {
  beginResetModel();
  rows_.clear();
  endResetModel();
}

void EventListModel::setNumbers(const Numbers& numbers) {
  numbers_ = numbers;
  if (!rows_.empty()) emit dataChanged(index(0, Time), index(rowCount() - 1, Time));
}

double EventListModel::timeOf(int row) const {
  return rows_[static_cast<std::size_t>(row)].time_s;
}

int EventListModel::rowAt(double time_s, double spacing_s) const {
  int found = -1;
  for (int row = 0; row < rowCount(); ++row) {
    if (timeOf(row) <= time_s + spacing_s / 2.0 + kSlack_s) found = row;
  }
  return found;
}

int EventListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int EventListModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : ColumnCount;
}

QVariant EventListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole && index.column() == Time) return numbers_.seconds(row.time_s - strike_s_, 3);
  if (role == Qt::DisplayRole || role == Qt::ToolTipRole) return row.words;
  if (role == Qt::TextAlignmentRole && index.column() == Time) return int{Qt::AlignRight | Qt::AlignVCenter};
  return {};
}

}  // namespace ferrule
