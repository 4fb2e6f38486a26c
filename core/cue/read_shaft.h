// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/cue/cue_reading.h"
#include "core/cue/read_cue.h"
#include "core/cue/shaft_line.h"

namespace ferrule {

/// Reads a plain cue's line before one strike from what its shaft showed. lines: of the film, in time order, earlier
/// and later ones may be among them. Nothing with fewer than three lines in the last second and a half, and where they
/// do not point where the ball went: then they were something else.
[[nodiscard]] std::optional<CueReading> readShaft(std::span<const ShaftLine> lines, const StruckBall& ball);

}  // namespace ferrule
