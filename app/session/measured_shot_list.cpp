// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/measured_shot_list.h"

namespace ferrule {

MeasuredShotList::MeasuredShotList(QWidget* parent) : QListWidget(parent) {
  setObjectName(QStringLiteral("measuredShots"));
  setAccessibleName(tr("Shots measured so far"));
  setFrameShape(QFrame::NoFrame);
  setWordWrap(true);
  setSpacing(2);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSelectionMode(QAbstractItemView::NoSelection);
  setFocusPolicy(Qt::TabFocus);
}

void MeasuredShotList::setRows(const QStringList& rows) {
  const bool grows = rows.size() > count();
  while (count() > rows.size())
    delete takeItem(count() - 1);
  for (int row = 0; row < rows.size(); ++row) {
    if (row == count()) {
      addItem(rows[row]);
    } else if (item(row)->text() != rows[row]) {
      item(row)->setText(rows[row]);
    }
  }
  if (grows) scrollToBottom();
}

}  // namespace ferrule
