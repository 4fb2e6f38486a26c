// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/progress/progress_service.h"
#include "app/report/report_words.h"

/// What the Progress place says beside its figures. Rich text is escaped where it holds names.
namespace ferrule {

/// "Ada, 1 Mar 2026 to 31 Mar 2026, matches"
[[nodiscard]] QString periodWords(const ProgressColumn& column, const ReportWords& words);
/// What to work on, with evidence, drill and target; or that there is not enough. Rich text.
[[nodiscard]] QString workWords(const PlayerProgress& progress, std::int64_t now_ms, const ReportWords& words);
/// What the figures rest on and what was left out. Rich text.
[[nodiscard]] QString basisWords(const DataQuality& quality, const ReportWords& words);
/// A row of a list of shots: "2 Mar 2026 · Tuesday · 12".
[[nodiscard]] QString listedWords(const PlayedSession& session, const PlayedShot& shot, const ReportWords& words);

}  // namespace ferrule
