// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/players/people_list_model.h"

#include <QApplication>
#include <QPainter>
#include <algorithm>

#include "app/players/people_words.h"
#include "app/window/inks.h"
#include "app/words/joining.h"

namespace ferrule {

namespace {

constexpr int kRow_px = 28;
constexpr int kPad_px = 8;

bool passes(const PersonRow& row, const QString& search, const QString& group) {
  const auto& groups = row.details.groups;
  if (!group.isEmpty() && std::ranges::find(groups, group.toStdString()) == groups.end()) return false;
  const auto holds = [&](const std::string& text) {
    return QString::fromStdString(text).contains(search, Qt::CaseInsensitive);
  };
  return search.isEmpty() || holds(row.details.player.name) || std::ranges::any_of(groups, holds);
}

QString groupWords(const PersonRow& row) {
  QStringList groups;
  for (const std::string& group : row.details.groups)
    groups << QString::fromStdString(group);
  return listOf(groups);
}

}  // namespace

void PeopleListModel::setPeople(const std::vector<PersonRow>& people, UtcMilliseconds at) {
  if (people == people_ && at == at_) return;
  beginResetModel();
  people_ = people;
  at_ = at;
  refill();
  endResetModel();
}

void PeopleListModel::setFilter(const QString& search, const QString& group) {
  if (search == search_ && group == group_) return;
  beginResetModel();
  search_ = search;
  group_ = group;
  refill();
  endResetModel();
}

void PeopleListModel::refill() {
  shown_.clear();
  for (std::size_t i = 0; i < people_.size(); ++i) {
    if (passes(people_[i], search_, group_)) shown_.push_back(i);
  }
}

int PeopleListModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant PeopleListModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const PersonRow& row = people_[shown_[static_cast<std::size_t>(index.row())]];
  const QString name = QString::fromStdString(row.details.player.name);
  const QString mark = markWords(row, at_);
  switch (role) {
    case Qt::DisplayRole:
      return name;
    case PlayerRole:
      return QVariant::fromValue<qlonglong>(row.details.player.id.value);
    case MarkRole:
      return mark;
    case Qt::AccessibleTextRole:
      return mark.isEmpty() ? name : listOf({name, mark});
    case Qt::ToolTipRole: {
      QStringList lines{name};
      if (!row.details.groups.empty()) lines << groupWords(row);
      if (!mark.isEmpty()) lines << mark;
      return lines.join(QLatin1Char('\n'));
    }
    default:
      return {};
  }
}

int PeopleListModel::rowOf(PlayerId player) const {
  for (std::size_t i = 0; i < shown_.size(); ++i) {
    if (people_[shown_[i]].details.player.id == player) return static_cast<int>(i);
  }
  return -1;
}

void PersonRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QStyleOptionViewItem cell = option;
  initStyleOption(&cell, index);
  const QString name = cell.text;
  cell.text.clear();
  const QStyle* style = cell.widget != nullptr ? cell.widget->style() : QApplication::style();
  style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);
  const bool isSelected = option.state & QStyle::State_Selected;
  const Inks inks = inksFor(option.palette);
  const QColor ink = isSelected ? option.palette.color(QPalette::HighlightedText) : inks.text;
  painter->save();
  QRect box = option.rect.adjusted(kPad_px, 0, -kPad_px, 0);
  const QString mark = index.data(PeopleListModel::MarkRole).toString();
  if (!mark.isEmpty()) {
    painter->setFont(scaled(option.font, 0.9));
    painter->setPen(isSelected ? ink : inks.quiet);
    // The name keeps at least half of the row.
    const int width = std::min(painter->fontMetrics().horizontalAdvance(mark) + 1, box.width() / 2);
    const QRect right(box.right() - width + 1, box.top(), width, box.height());
    painter->drawText(right, Qt::AlignRight | Qt::AlignVCenter,
                      painter->fontMetrics().elidedText(mark, Qt::ElideRight, width));
    box.setRight(right.left() - kPad_px);
  }
  painter->setFont(option.font);
  painter->setPen(ink);
  painter->drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
                    option.fontMetrics.elidedText(name, Qt::ElideRight, box.width()));
  painter->restore();
}

QSize PersonRowDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  QSize size = QStyledItemDelegate::sizeHint(option, index);
  size.setHeight(std::max(kRow_px, option.fontMetrics.height() + 6));
  return size;
}

}  // namespace ferrule
