// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/camera/check_file.h"
#include "core/camera/self_check.h"

namespace ferrule {

/// What a check found and what to do about it, in one sentence.
[[nodiscard]] QString checkSentence(const SelfCheck& check, const CheckNames& names);
/// One piece of evidence in one line, in mm, with what a sound rig keeps to.
[[nodiscard]] QString findingLine(const CheckFinding& finding);
/// Whether a finding is within what a sound rig keeps to; what was not seen speaks neither way and is sound.
[[nodiscard]] bool isSound(const CheckFinding& finding);

}  // namespace ferrule
