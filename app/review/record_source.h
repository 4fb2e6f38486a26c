// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/review/review_source.h"

namespace ferrule {

/// Reads a record file for the review, on a connection of its own. The file must exist and is not changed.
[[nodiscard]] Result<std::unique_ptr<ReviewSource>> openRecordSource(const std::string& path);

}  // namespace ferrule
