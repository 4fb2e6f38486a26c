// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/demo_session.h"

#include <QDir>
#include <QStandardPaths>

namespace ferrule {

namespace {

/// The first film of a folder by its name; empty where there is none.
QString filmIn(const QDir& folder) {
  const QStringList films = folder.entryList({QStringLiteral("*.mp4")}, QDir::Files, QDir::Name);
  return films.isEmpty() ? QString() : folder.filePath(films.front());
}

}  // namespace

QString demoFolder(const QString& programFolder) {
  for (const char* place : {"../share/ferrule/demo", "../../resources/demo"}) {
    const QDir folder(QDir(programFolder).filePath(QString::fromLatin1(place)));
    const bool whole = folder.exists(QStringLiteral("rig.json")) && folder.exists(QStringLiteral("table.json"));
    if (whole && !filmIn(folder).isEmpty()) return QDir::cleanPath(folder.absolutePath());
  }
  return {};
}

QString demoRecordPath() {
  const QDir data(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation));
  return data.filePath(QStringLiteral("ferrule/demo.sqlite"));
}

MeasureOptions demoOptions(const QString& folder) {
  const QDir demo(folder);
  MeasureOptions options;
  options.film = filmIn(demo).toStdString();
  options.rig = demo.filePath(QStringLiteral("rig.json")).toStdString();
  options.table = demo.filePath(QStringLiteral("table.json")).toStdString();
  options.game = "eight-ball";
  options.record = demoRecordPath().toStdString();
  options.session = "Demo session (invented)";
  options.players = {"Demo player (invented)"};
  // Broken off before, it is measured anew.
  options.again = true;
  return options;
}

}  // namespace ferrule
