// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ferrule {

/// Where sessions are kept while no record was opened.
[[nodiscard]] QString ownRecord();

/// Tells whether a record was written to since it was read: changes with its file and the log beside it.
[[nodiscard]] QString stampOf(const QString& record);

}  // namespace ferrule
