// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/drills/mirror.h"
#include "core/drills/trial.h"
#include "core/record/drill_rows.h"
#include "core/record/record.h"

/// Drills and their runs in a record.
namespace ferrule {

/// What a run needs before its first try.
struct RunTerms {
  Drill drill;  ///< as it is listed, not mirrored
  Mirroring mirroring;
  std::string tableName;
  MeasuredTable table;
  std::string player;  ///< empty when nobody said

  bool operator==(const RunTerms&) const = default;
};

/// A run with its tries.
struct KeptRun {
  DrillRunId id;
  RunTerms terms;
  UtcMilliseconds started = 0;
  std::optional<UtcMilliseconds> ended;  ///< nothing: still open, or broken off
  RunSource source = RunSource::Hand;
  std::vector<DrillTrial> trials;  ///< their shots are those of the record, known by the first alone: not set here

  /// The drill as it is played.
  [[nodiscard]] Drill played() const { return mirrored(terms.drill, terms.mirroring); }
};

/// A person's own drills. Errors of all functions: those of Record; RecordBroken for a drill that cannot be read.
[[nodiscard]] Result<std::vector<Drill>> ownDrills(Record& record);
/// A new one, or in place of what was kept under its key.
[[nodiscard]] Result<void> keepOwnDrill(Record& record, const Drill& drill, UtcMilliseconds now);

/// A player who is not known yet is added.
[[nodiscard]] Result<KeptRun> beginRun(Record& record, const RunTerms& terms, UtcMilliseconds now);
/// shot: the recorded shot that the try began with.
[[nodiscard]] Result<void> keepTrial(Record& record, DrillRunId run, const DrillTrial& trial,
                                     std::optional<ShotId> shot = std::nullopt);
/// A run without a try goes; it says nothing.
[[nodiscard]] Result<void> endRun(Record& record, const KeptRun& run, UtcMilliseconds now);
/// A run as the record has it. Errors: RecordBroken.
[[nodiscard]] Result<KeptRun> keptRun(const DrillRunEntry& entry, const Record& record);
/// Of all drills, oldest first.
[[nodiscard]] Result<std::vector<KeptRun>> keptRuns(Record& record);

/// Counts the tries at a drill among the shots of a recorded session and keeps them as a run, which starts when the
/// session did; a run of the same drill and mirror image that was counted there before is replaced. Nothing is kept
/// where no try is found: the run that comes back then has none. drill: as it is listed. mirroring: nothing: the image
/// with the most tries, the plain one among equal ones.
[[nodiscard]] Result<KeptRun> runFromSession(Record& record, SessionId session, const Drill& drill,
                                             std::optional<Mirroring> mirroring);

}  // namespace ferrule
