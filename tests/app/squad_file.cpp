// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/squad_file.h"

#include <QTemporaryDir>

#include "core/record/record.h"
#include "tests/support/invented_squad.h"
#include "tests/support/squad_record.h"

namespace ferrule {

const QString& squadRecord() {
  static const QTemporaryDir folder;
  static const QString path = [] {
    const QString file = folder.filePath(QStringLiteral("squad.sqlite"));
    auto record = Record::open(file.toStdString());
    if (!record) qFatal("the squad's record cannot be made");
    invented::Plan plan;
    plan.weeks = 8;
    plan.practiceShots = 40;
    plan.matchShots = 0;
    if (!invented::putInto(*record, invented::squad(invented::juniorSquad(), plan))) qFatal("it cannot be filled");
    return file;
  }();
  return path;
}

}  // namespace ferrule
