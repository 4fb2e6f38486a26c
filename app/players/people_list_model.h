// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <QStyledItemDelegate>
#include <vector>

#include "core/record/people_values.h"

namespace ferrule {

/// The people of a record by name, as far as they pass a search and a group.
class PeopleListModel : public QAbstractListModel {
  Q_OBJECT
 public:
  enum Role {
    PlayerRole = Qt::UserRole,  ///< the number in the record
    MarkRole,                   ///< guest, and what may not be done
  };
  using QAbstractListModel::QAbstractListModel;

  /// at: when consents are asked for.
  void setPeople(const std::vector<PersonRow>& people, UtcMilliseconds at);
  /// search: part of a name or a group, whatever its case. group: empty for everybody.
  void setFilter(const QString& search, const QString& group);

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  /// -1 when the player is not shown.
  [[nodiscard]] int rowOf(PlayerId player) const;

 private:
  void refill();

  std::vector<PersonRow> people_;
  std::vector<std::size_t> shown_;
  UtcMilliseconds at_ = 0;
  QString search_;
  QString group_;
};

/// A name, and quietly at the right what is to be known of it.
class PersonRowDelegate : public QStyledItemDelegate {
  Q_OBJECT
 public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace ferrule
