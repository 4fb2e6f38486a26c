// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/record/merge_record.h"

namespace ferrule {

/// What came in from another record, what stayed as it was, and what a person may want to look at.
[[nodiscard]] QString mergeSentences(const MergeReport& report);

}  // namespace ferrule
