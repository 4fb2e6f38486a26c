// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/session/known_rigs.h"

#include <QFileInfo>
#include <QSettings>
#include <algorithm>

#include "core/table/table_size.h"

namespace ferrule {

namespace {

constexpr int kMostRemembered = 6;

const QString& settingsKey() {
  static const QString key = QStringLiteral("session/rigs");
  return key;
}

bool isThere(const RigInUse& rig) {
  const bool preset = tableSizeNamed(rig.table.toStdString()).has_value();
  return QFileInfo::exists(rig.rig) && (preset || QFileInfo::exists(rig.table));
}

void add(std::vector<RigInUse>& rigs, const RigInUse& rig) {
  const bool known = std::ranges::any_of(
      rigs, [&](const RigInUse& other) { return other.rig == rig.rig && other.table == rig.table; });
  if (!known && isThere(rig)) rigs.push_back(rig);
}

}  // namespace

std::vector<RigInUse> knownRigs() {
  std::vector<RigInUse> rigs;
  if (const auto used = rigInUse()) rigs.push_back(*used);
  QSettings settings;
  const int count = settings.beginReadArray(settingsKey());
  for (int i = 0; i < count; ++i) {
    settings.setArrayIndex(i);
    add(rigs, {settings.value(QStringLiteral("name")).toString(), settings.value(QStringLiteral("rig")).toString(),
               settings.value(QStringLiteral("table")).toString()});
  }
  return rigs;
}

void rememberRig(const RigInUse& rig) {
  std::vector<RigInUse> rigs;
  add(rigs, rig);
  const auto used = rigInUse();
  for (const RigInUse& known : knownRigs()) {
    if (known != used) add(rigs, known);
  }
  QSettings settings;
  settings.beginWriteArray(settingsKey());
  for (int i = 0; i < std::min(static_cast<int>(rigs.size()), kMostRemembered); ++i) {
    const RigInUse& known = rigs[static_cast<std::size_t>(i)];
    settings.setArrayIndex(i);
    settings.setValue(QStringLiteral("name"), known.name);
    settings.setValue(QStringLiteral("rig"), known.rig);
    settings.setValue(QStringLiteral("table"), known.table);
  }
  settings.endArray();
}

}  // namespace ferrule
