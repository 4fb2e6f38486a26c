// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/base/error.h"

namespace ferrule {

/// What a merge brought.
struct MergeReport {
  int players = 0;  ///< new ones, as the counts below
  int sessions = 0;
  int frames = 0;
  int shots = 0;
  int drillRuns = 0;
  int framesUpdated = 0;  ///< known ones that had been gone on with, or corrected, in the other record
  /// Frames that were corrected or gone on with in both records: ours stand as they were.
  int framesApart = 0;
  /// New players whose name was taken by somebody else: the name they had, and the one they have now.
  std::vector<std::pair<std::string, std::string>> renamed;
  int erasedHere = 0;                    ///< players of the other record who were erased from this one: left out
  std::vector<std::string> erasedThere;  ///< names of players of this record who were erased from the other one

  /// Nothing of the other record was new.
  [[nodiscard]] bool isEmpty() const {
    return players + sessions + frames + shots + drillRuns + framesUpdated == 0 && renamed.empty();
  }
  bool operator==(const MergeReport&) const = default;
};

/// Takes everything of another record into this one, as one transaction; the other file stays as it is. People, tables,
/// sessions, frames, consents and runs are known by their random uids, films, lenses and rigs by their content, shots
/// by their frame and number: what was taken in before does not come twice. Where both hold a frame, the one that holds
/// all corrections and shots of the other counts, corrections included; where each has some of its own, ours stands. Of
/// people, tables and drills that both have, ours stands; groups, consents, notes and tags come together. Who was
/// erased here does not come back, and nobody is erased here because of the other record. What is under way there stays
/// there.
///
/// path: of this record, made where it is not there. Errors: those of Record::open for either file (RecordTooNew:
/// the other one was written by a newer version), FileMissing (the other one), those of Record.
[[nodiscard]] Result<MergeReport> mergeRecord(const std::string& path, const std::string& other);

}  // namespace ferrule
