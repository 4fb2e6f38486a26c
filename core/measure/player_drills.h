// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "core/measure/drill_keeping.h"
#include "core/progress/played_shot.h"
#include "core/record/recorded_shot.h"

namespace ferrule {

/// What a drill asked of the shot that a try began with.
struct DrillAsk {
  std::string drill;  ///< its key
  Meant meant;

  bool operator==(const DrillAsk&) const = default;
};

/// One player's runs of drills, oldest first, and the recorded shots among their tries.
struct PlayerDrills {
  std::vector<KeptRun> runs;
  std::map<ShotId, DrillAsk> asks;
};

/// Runs that began in the period; asks of all runs, whenever they were counted. A station asks for a speed and a tip
/// point where it says so, and for the middle of the zone in which the cue ball is to rest. Errors: those of Record;
/// RecordBroken for a drill that cannot be read.
[[nodiscard]] Result<PlayerDrills> playerDrills(Record& record, PlayerId player, const SessionPeriod& period);

}  // namespace ferrule
