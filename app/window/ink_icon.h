// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QIcon>
#include <QString>

namespace ferrule {

/// A line icon of resources/icons by its name, drawn in the text colour of the application's palette at the moment it
/// is painted, sharp at every scale.
[[nodiscard]] QIcon inkIcon(const QString& name);

}  // namespace ferrule
