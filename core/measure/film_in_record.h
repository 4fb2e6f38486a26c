// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/record/record.h"

namespace ferrule {

/// What a record holds of a film.
struct FilmInRecord {
  SessionSummary session;
  int shots = 0;          ///< that were measured in it
  bool complete = false;  ///< measured to its end

  bool operator==(const FilmInRecord&) const = default;
};

/// Whether a film was measured before, under whatever name: the latest session that holds all of it, or else the latest
/// that holds a part. Errors: FileMissing, FileUnreadable; those of Record.
[[nodiscard]] Result<std::optional<FilmInRecord>> filmInRecord(Record& record, const std::string& film);

}  // namespace ferrule
