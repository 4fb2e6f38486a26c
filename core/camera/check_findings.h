// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/camera/self_check.h"

namespace ferrule {

/// What each piece of evidence says under the rig and the table file as they are, in mm a person can check with a rule.
[[nodiscard]] std::vector<CheckFinding> findingsOf(const Rig& rig, const MeasuredTable& measured,
                                                   const CheckEvidence& evidence);

}  // namespace ferrule
