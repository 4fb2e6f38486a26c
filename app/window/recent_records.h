// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QSettings;

namespace ferrule {

/// How many records the menu remembers.
inline constexpr int kMostRecentRecords = 8;

/// The records that were opened last and are still there, the last one first.
[[nodiscard]] QStringList recentRecords(const QSettings& settings);
/// Puts a record first in that list. path: as it was opened; kept as an absolute one.
void noteRecentRecord(QSettings& settings, const QString& path);

}  // namespace ferrule
