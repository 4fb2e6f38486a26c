// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "core/camera/rig.h"
#include "core/table/measured_table.h"

class QHBoxLayout;

namespace ferrule {

/// Everything that moves a point between sensor and table, as a row of boxes: what it is, where it comes from, when,
/// and the picture after it.
class ChainRow : public QWidget {
  Q_OBJECT
 public:
  explicit ChainRow(QWidget* parent = nullptr);

  /// picture: of the film, upright as the reader gives it; may be null.
  void setRig(const Rig& rig, const MeasuredTable& measured, const QImage& picture, const QString& film);
  void clear();
  [[nodiscard]] int boxes() const { return boxes_; }

 private:
  void addBox(const QString& title, const QString& source, const QString& date, const QString& purpose,
              const QImage& picture);

  QHBoxLayout* row_;
  int boxes_ = 0;
};

}  // namespace ferrule
