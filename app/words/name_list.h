// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <string>
#include <vector>

namespace ferrule {

/// The names of a list that a person typed, without the spaces around them and without empty ones. They are parted by
/// commas or semicolons of any script.
[[nodiscard]] std::vector<std::string> namesIn(const QString& list);

}  // namespace ferrule
