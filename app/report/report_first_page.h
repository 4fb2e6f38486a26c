// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/report/report_builder.h"
#include "app/report/report_words.h"

namespace ferrule {

/// The page that is read: three sentences, what changed, what to work on, how sure it is. No chart, no jargon.
[[nodiscard]] ReportPage firstPage(const PlayerProgress& progress, const ReportSettings& settings,
                                   const ReportWords& words);

}  // namespace ferrule
