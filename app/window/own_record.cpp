// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/own_record.h"

#include <QDateTime>
#include <QFileInfo>
#include <QStandardPaths>

namespace ferrule {

QString ownRecord() {
  return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
         QStringLiteral("/ferrule/sessions.sqlite");
}

QString stampOf(const QString& record) {
  QString stamp = record;
  for (const QString& path : {record, record + QStringLiteral("-wal")}) {
    const QFileInfo file(path);
    // An empty log is the same as none: reading alone makes one.
    if (file.exists() && file.size() > 0)
      stamp += QStringLiteral(" %1 %2").arg(file.size()).arg(file.lastModified().toMSecsSinceEpoch());
  }
  return stamp;
}

}  // namespace ferrule
