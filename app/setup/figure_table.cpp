// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/figure_table.h"

#include <QHeaderView>
#include <QTableWidget>

namespace ferrule {

QTableWidget* figureTable(const char* name, const QStringList& heads) {
  auto* table = new QTableWidget(0, static_cast<int>(heads.size()));
  table->setObjectName(QLatin1String(name));
  table->setHorizontalHeaderLabels(heads);
  table->verticalHeader()->hide();
  table->verticalHeader()->setDefaultSectionSize(kFigureRow_px);
  table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table->setTabKeyNavigation(false);
  table->setShowGrid(false);
  return table;
}

void setFigure(QTableWidget* table, int row, int column, const QString& words, bool number) {
  auto* item = new QTableWidgetItem(words);
  if (number) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
  table->setItem(row, column, item);
}

}  // namespace ferrule
