// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/record/record.h"
#include "core/rules/ruling_text.h"

namespace ferrule {

/// A ruling as the record keeps it.
[[nodiscard]] RulingEntry entryOf(const RuledShot& ruled);

/// Name and version of what ranks the plans, as the record keeps it.
[[nodiscard]] std::string plannerName();

/// The players of these names in a record; who is not known yet is added. Errors: those of Record.
[[nodiscard]] Result<std::vector<PlayerId>> playersNamed(Record& record, const std::vector<std::string>& names);

}  // namespace ferrule
