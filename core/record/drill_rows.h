// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/record_values.h"

/// Drills and their runs as the record keeps them. What a drill is, only core/drills knows: here it is a text.
namespace ferrule {

using DrillRunId = Id<struct DrillRunTag>;

/// A person's own drill.
struct DrillEntry {
  std::string key;      ///< unique in one record
  std::string content;  ///< a file of this drill alone (core/drills/drill_file.h)

  bool operator==(const DrillEntry&) const = default;
};

/// Where the tries of a run come from.
enum class RunSource { Hand, Film, Live };

/// A run to be added. It carries its drill with it, so that it can be read when the drill was changed or deleted.
struct NewDrillRun {
  std::string drillKey;
  std::string drill;     ///< as DrillEntry::content; as it is listed, not mirrored
  std::string mirrored;  ///< "", "sides", "ends", "both"
  std::string tableName;
  MeasuredTable table;
  std::optional<PlayerId> player;
  std::optional<SessionId> session;  ///< of a run that was counted from a session's shots
  UtcMilliseconds started = 0;
  RunSource source = RunSource::Hand;

  bool operator==(const NewDrillRun&) const = default;
};

/// What one goal of a try came to.
struct TrialGoalEntry {
  std::optional<bool> met;
  std::optional<double> figure;

  bool operator==(const TrialGoalEntry&) const = default;
};

/// One try; its number in the run follows from its place.
struct TrialEntry {
  int station = 0;  ///< from 0
  std::optional<TablePoint> leave;
  std::optional<MissSide> missSide;
  std::optional<double> setUpError_m;
  std::optional<ShotId> shot;  ///< the recorded shot that it began with
  std::vector<TrialGoalEntry> goals;

  bool operator==(const TrialEntry&) const = default;
};

struct DrillRunEntry {
  DrillRunId id;
  NewDrillRun run;
  std::string playerName;                ///< empty when the player is unknown
  std::optional<UtcMilliseconds> ended;  ///< nothing: still open, or broken off
  std::vector<TrialEntry> trials;

  bool operator==(const DrillRunEntry&) const = default;
};

/// "hand", "film", "live".
[[nodiscard]] std::string_view toText(RunSource source);
[[nodiscard]] std::optional<RunSource> runSourceFromText(std::string_view text);

}  // namespace ferrule
