// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QListWidget>

namespace ferrule {

/// The shots of a session as they arrive; the newest stays in view.
class MeasuredShotList : public QListWidget {
  Q_OBJECT
 public:
  explicit MeasuredShotList(QWidget* parent = nullptr);

  /// One row for each shot, in their order. Rows whose words stay the same are left alone.
  void setRows(const QStringList& rows);
};

}  // namespace ferrule
