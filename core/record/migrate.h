// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/connection.h"

namespace ferrule {

/// PRAGMA user_version after checking that the file is a record at all. 0 for an empty file.
/// Errors: RecordNotADatabase, RecordTooNew.
[[nodiscard]] Result<int> recordVersion(Connection& connection);

/// Brings a record to kRecordVersion, each step in its own transaction, after a copy of the whole file was made beside
/// it. A step that fails leaves the record at the version before. Nothing is copied for a new file.
/// Errors: RecordReadOnly, RecordLocked, RecordFull, RecordBroken (also when the old file's own check fails).
[[nodiscard]] Result<void> migrate(Connection& connection);

/// Where the copy of a record of that version goes.
[[nodiscard]] std::string backupPath(const std::string& path, int version);

}  // namespace ferrule
