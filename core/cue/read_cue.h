// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/camera/rig.h"
#include "core/cue/cue_reading.h"
#include "core/cue/cue_sighting.h"
#include "core/cue/pitch_log.h"
#include "core/table/measured_cue.h"

namespace ferrule {

/// What is known of a strike before the cue is read.
struct StruckBall {
  double strike_s = 0.0;
  TablePoint place;  ///< where the cue ball lay
  double place_u_m = 0.0005;
  double radius_m = 0.0;
  std::optional<Measured> aim_rad;  ///< the way it went
};

/// Reads the cue's line, elevation and tip point from its tags before one strike. sightings: of the film, in time
/// order, earlier and later ones may be among them. log: may be null; without it the elevation comes from the tags and
/// the bridge's height alone, and is absent where modules are smaller than three pixels. Nothing where the tags were
/// seen in fewer than five images of the address.
///
/// Assumes that the bridge hand lies still through the address, that the shaft is straight, and that the cue goes on
/// along its line in the last images before the strike.
[[nodiscard]] std::optional<CueReading> readCue(const Rig& rig, const MeasuredCue& cue,
                                                std::span<const CueSighting> sightings, const PitchLog* log,
                                                const StruckBall& ball);

}  // namespace ferrule
