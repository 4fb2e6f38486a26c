// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/measure/rule_frame.h"
#include "core/reading/read_shot.h"
#include "core/record/record.h"

namespace ferrule {

/// A frame with all that its shots are read and ruled by.
struct WholeFrame {
  FrameSummary frame;
  std::vector<FrameShot> shots;
  std::vector<Placement> placements;
  MeasuredTable table;
  std::vector<std::string> players;  ///< of the session, in playing order
  ReadingKnowledge knowledge;
};

/// The frame of a shot. Errors: NotFound; those of Record.
[[nodiscard]] Result<WholeFrame> wholeFrame(Record& record, const StoredShot& shot);

/// What the referee now says from a shot on, and who played then: the changes against what stands. frame: as it was,
/// whether and by which rules it was ruled; shots: as they are to be. A shot without a ruling stays without one unless
/// it is made: one that was not there before.
void ruleFrom(const WholeFrame& frame, const std::vector<FrameShot>& shots, std::size_t from, const ShotId& made,
              std::vector<ShotChange>& changes);

}  // namespace ferrule
