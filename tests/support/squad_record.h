// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/record/record.h"
#include "tests/support/invented_squad.h"

namespace ferrule::invented {

/// Puts a squad into a record, shot by shot, as measuring does: each session with films of a clock of its own, match
/// frames with rulings. Needs a QCoreApplication.
[[nodiscard]] Result<void> putInto(Record& record, const Squad& squad);

}  // namespace ferrule::invented
