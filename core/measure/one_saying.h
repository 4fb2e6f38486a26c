// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/correct_shot.h"
#include "core/measure/frame_in_record.h"

namespace ferrule {

/// What one saying changes in its shot, or why it cannot be said.
struct SaidOfOne {
  std::optional<NotSaid> why;
  /// First what the correction keeps of the saying; nothing yet where it is the ruling. A new reading is not among
  /// them.
  std::vector<ShotChange> changes;
};

/// Puts a saying into a shot of a frame: into its sayings, its reading and its tracks. since_s: rest of the shot
/// before, from which on placements belong to this one. next: the balls before the next shot. Splits and joins, which
/// change what shots there are, are not said here.
[[nodiscard]] SaidOfOne sayOfOne(FrameShot& shot, const WholeFrame& frame, double since_s, const Position& next,
                                 const ShotSaying& saying);

}  // namespace ferrule
