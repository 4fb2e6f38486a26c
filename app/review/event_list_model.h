// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "app/words/numbers.h"

namespace ferrule {

/// What happened in a shot, in order: time since the strike, and words.
class EventListModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  enum Column { Time, Words, ColumnCount };

  explicit EventListModel(QObject* parent = nullptr);

  void setShot(const ShotReading& shot);
  void clear();
  void setNumbers(const Numbers& numbers);
  /// The film time of a row.
  [[nodiscard]] double timeOf(int row) const;
  /// The last row that has happened at an image's film time; -1 before the strike. spacing_s: between images; an event
  /// belongs to the image nearest to it.
  [[nodiscard]] int rowAt(double time_s, double spacing_s = 0.0) const;

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;

 private:
  struct Row {
    double time_s = 0.0;
    QString words;
  };

  std::vector<Row> rows_;
  double strike_s_ = 0.0;
  Numbers numbers_;
};

}  // namespace ferrule
