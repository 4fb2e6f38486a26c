// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/squad_file.h"

#include <QTemporaryDir>

#include "core/record/record.h"
#include "tests/support/invented_squad.h"
#include "tests/support/squad_record.h"

namespace ferrule {

namespace {

/// In a folder that goes with the program.
QString written(const QTemporaryDir& folder, const invented::Plan& plan) {
  const QString file = folder.filePath(QStringLiteral("squad.sqlite"));
  auto record = Record::open(file.toStdString());
  if (!record) qFatal("the squad's record cannot be made");
  if (!invented::putInto(*record, invented::squad(invented::juniorSquad(), plan))) qFatal("it cannot be filled");
  return file;
}

}  // namespace

const QString& squadRecord() {
  static const QTemporaryDir folder;
  static const QString path = written(folder, {.weeks = 8, .practiceShots = 40, .matchShots = 0});
  return path;
}

const QString& matchRecord() {
  static const QTemporaryDir folder;
  static const QString path = written(folder, {.weeks = 8, .practiceShots = 30, .matchShots = 40});
  return path;
}

}  // namespace ferrule
