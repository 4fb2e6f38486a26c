// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/reading/contacts.h"
#include "core/reading/outcome.h"
#include "core/reading/shot_cutter.h"

namespace ferrule {

/// What makes this shot's reading less than clean, in the order of the enum. An overhead camera cannot tell what a hand
/// did under an arm: what looks like one is said, not judged.
///
/// motions, contacts: of the shot. doubts: what the reading found by itself.
[[nodiscard]] std::vector<ShotFlag> shotFlags(const CutShot& cut, const std::vector<BallMotion>& motions,
                                              const std::vector<Contact>& contacts, const Doubts& doubts,
                                              double radius_m, double imageInterval_s);

/// Whether a flag leaves the outcome to a person.
[[nodiscard]] bool leavesOutcomeOpen(ShotFlag flag);

}  // namespace ferrule
