// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/measure/measure.h"

/// The demo: a film of an invented scenario with its rig and table.
namespace ferrule {

/// The folder that holds it: beside an installed program, or in the tree that it was built in. Empty where there is
/// none. programFolder: of the executable.
[[nodiscard]] QString demoFolder(const QString& programFolder);
/// Where its record is kept, apart from the user's own sessions.
[[nodiscard]] QString demoRecordPath();
/// As packaging/run measures it.
[[nodiscard]] MeasureOptions demoOptions(const QString& folder);

}  // namespace ferrule
