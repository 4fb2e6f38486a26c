// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/camera/rig.h"
#include "core/cue/cue_model.h"
#include "core/cue/cue_sighting.h"

namespace ferrule {

/// Roughly where a cue is, from the middles of its tags at a cue's usual height; with one tag the tip is thought to
/// point at the cue ball. Nothing where no tag of the model is seen.
[[nodiscard]] std::optional<CuePose> roughPose(const Rig& rig, const CueModel& model, const CueSighting& sighting,
                                               TablePoint cueBall);

/// How each tag was stuck on: quarter turns clockwise of its print, from upright with the tip above. Most images
/// decide.
[[nodiscard]] std::vector<int> quarterTurnsOf(const Rig& rig, const CueModel& model,
                                              std::span<const CueSighting> sightings, TablePoint cueBall);

}  // namespace ferrule
