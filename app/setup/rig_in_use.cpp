// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/setup/rig_in_use.h"

#include <QFileInfo>
#include <QSettings>

namespace ferrule {

std::optional<RigInUse> rigInUse() {
  const QSettings settings;
  const RigInUse rig{settings.value(QStringLiteral("rigInUse/name")).toString(),
                     settings.value(QStringLiteral("rigInUse/rig")).toString(),
                     settings.value(QStringLiteral("rigInUse/table")).toString()};
  if (!QFileInfo::exists(rig.rig) || !QFileInfo::exists(rig.table)) return std::nullopt;
  return rig;
}

void setRigInUse(const RigInUse& rig) {
  QSettings settings;
  settings.setValue(QStringLiteral("rigInUse/name"), rig.name);
  settings.setValue(QStringLiteral("rigInUse/rig"), rig.rig);
  settings.setValue(QStringLiteral("rigInUse/table"), rig.table);
}

}  // namespace ferrule
