// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/cue/cue_reading.h"

/// A cue's reading in the form of the files: one line of JSON, lengths in mm, angles in degrees, times in s of the
/// film (DEVELOPERS.md, measured.json). What was not seen is null.
namespace ferrule {

[[nodiscard]] std::string cueText(const CueReading& reading);
/// Nothing for a text that is none of cueText()'s.
[[nodiscard]] std::optional<CueReading> cueFromText(const std::string& text);

/// A shot's explanation (core/table/shot_explanation.h) with the cue's reading as its field "cue"; explanation may be
/// empty for none.
[[nodiscard]] std::string explanationWithCue(const std::string& explanation, const CueReading& reading);
/// The reading in a shot's explanation; nothing where there is none.
[[nodiscard]] std::optional<CueReading> cueInExplanation(const std::string& explanation);

}  // namespace ferrule
