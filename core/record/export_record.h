// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/record/record.h"

namespace ferrule {

struct ExportOptions {
  std::string folder;  ///< made where it is not there
  /// Only this player's shots, groups, consents and notes, and no other player's name.
  std::optional<std::string> player;

  bool operator==(const ExportOptions&) const = default;
};

struct ExportReport {
  std::vector<std::string> files;  ///< paths
  int sessions = 0;
  int shots = 0;
};

/// Writes everything to FOLDER/record.json ("ferrule-record/1") and one row a shot to FOLDER/shots.csv (RFC 4180; one
/// header row whose names carry the units; UTF-8; times in UTC). The same record gives the same bytes, in every locale.
/// Both files appear when both are whole.
/// Errors: NotFound (subject: the player), FileNotWritable, those of Record.
[[nodiscard]] Result<ExportReport> exportRecord(Record& record, const ExportOptions& options);

}  // namespace ferrule
