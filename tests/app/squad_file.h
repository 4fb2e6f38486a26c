// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ferrule {

/// A record of an invented squad, written once: six players, eight practices of 40 shots each, no match.
[[nodiscard]] const QString& squadRecord();
/// The same people with a judged match each week: eight practices of 30 shots and eight matches of 40.
[[nodiscard]] const QString& matchRecord();

}  // namespace ferrule
