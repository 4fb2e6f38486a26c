// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "core/camera/rig.h"
#include "core/cue/cue_reading.h"
#include "core/cue/cue_sighting.h"
#include "core/table/measured_cue.h"

namespace ferrule {

/// How large the cue's tags show, how many of them were read, and what size the camera needs. images: of the time in
/// which they could have been read. expectedSide_px: of a black square at the cue ball, where no tag was read at all.
[[nodiscard]] TagsSeen tagsSeen(const MeasuredCue& cue, std::span<const CueSighting> sightings, long images,
                                double expectedSide_px);

/// How long a tag's black side is in the picture at a place of the table, at a cue's usual height, px.
[[nodiscard]] double expectedTagSide_px(const Rig& rig, const MeasuredCue& cue, TablePoint place);

}  // namespace ferrule
