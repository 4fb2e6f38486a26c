// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window/recent_records.h"

#include <QFileInfo>
#include <QSettings>

namespace ferrule {

namespace {

const QString kSetting = QStringLiteral("window/recentRecords");

}  // namespace

QStringList recentRecords(const QSettings& settings) {
  QStringList there;
  for (const QString& path : settings.value(kSetting).toStringList()) {
    if (QFileInfo::exists(path)) there << path;
  }
  return there;
}

void noteRecentRecord(QSettings& settings, const QString& path) {
  const QString absolute = QFileInfo(path).absoluteFilePath();
  // Those that are gone for now stay: the disk that holds them may come back.
  QStringList paths = settings.value(kSetting).toStringList();
  paths.removeAll(absolute);
  paths.prepend(absolute);
  settings.setValue(kSetting, paths.mid(0, kMostRecentRecords));
}

}  // namespace ferrule
