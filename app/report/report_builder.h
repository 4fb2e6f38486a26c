// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "app/report/report.h"
#include "app/words/numbers.h"
#include "core/progress/player_progress.h"
#include "core/record/consent.h"

namespace ferrule {

/// What a person consented to, as the record knows it.
struct ReportConsent {
  Player player;
  std::vector<ConsentEntry> ledger;  ///< as consents() gives it
};

struct ReportSettings {
  QLocale locale;
  SpeedUnit speedUnit = SpeedUnit::MetresPerSecond;  ///< in which speeds are shown
  std::optional<std::int64_t> from_ms;               ///< of the period as it was asked for, UTC
  std::optional<std::int64_t> until_ms;              ///< no longer in it
  QString coachNote;                                 ///< empty: lines to write on
  std::int64_t now_ms = 0;                           ///< UTC: the day of the report
  std::optional<ReportConsent> consent;              ///< nothing: the report says nothing of it
};

/// From a record. Errors: NotFound (the player), those of Record.
[[nodiscard]] Result<ReportConsent> reportConsent(Record& record, const std::string& player);

/// The report of one player: a page in plain words, then charts and what they rest on. Where there is nothing to show
/// there is a sentence that says why, never an empty chart.
[[nodiscard]] Report buildReport(const PlayerProgress& progress, const ReportSettings& settings);

}  // namespace ferrule
