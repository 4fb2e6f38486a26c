// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/physics/fingerprint.h"
#include "core/reading/shot_cutter.h"
#include "core/table/measured_table.h"
#include "core/table/shot.h"

namespace ferrule {

/// What is known beside the tracks.
struct ReadingKnowledge {
  std::optional<TablePoint3> camera;  ///< where it is, in the table frame
  std::optional<PocketedBall> call;   ///< what a person named, which stands against what the tracks suggest
  std::optional<Fingerprint> table;   ///< what earlier shots told of cloth, cushions and balls
};

/// Reads one cut shot: delivery, events, what fell, where everything rested, target and outcome. number: within the
/// film, from 1. Nothing when what was cut turns out not to be a shot (the cue ball never moved).
[[nodiscard]] std::optional<ShotReading> readShot(const CutShot& cut, const MeasuredTable& measured, int number,
                                                  const ReadingKnowledge& knowledge = {});

}  // namespace ferrule
