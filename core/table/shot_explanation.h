// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/table/shot.h"

/// What a reading says of itself beyond its plain values: where a miss came from, how the tried pot's line lay in the
/// pocket, how sure each event is, why a part of the strike is absent, and what is not clean. One JSON object that the
/// record keeps beside the shot; in radians, metres and seconds, every digit, so that what comes back is what went in.
/// A field that says nothing is left out, and one that is not known is skipped.
namespace ferrule {

/// {"miss_account", "target", "events", "delivery", "flags"}; nothing where the reading says none of it.
[[nodiscard]] std::optional<std::string> explanationText(const ShotReading& shot);

/// The text of a shot that was read anew: what it says of itself now, with what others had put beside the reading
/// before (fields that are none of explanationText()'s, such as the cue). before: the old text, if there was one.
[[nodiscard]] std::optional<std::string> explanationAnew(const ShotReading& shot,
                                                         const std::optional<std::string>& before);

/// Puts into a reading what a text says; what concerns a target or an event that the reading does not have is skipped.
/// False, and nothing put, where the text is none of explanationText()'s.
[[nodiscard]] bool explain(ShotReading& shot, const std::string& text);

/// The text without what was measured against the target: another ball or pocket was meant. Nothing where nothing else
/// is said.
[[nodiscard]] std::optional<std::string> explanationWithoutTarget(const std::string& text);

}  // namespace ferrule
