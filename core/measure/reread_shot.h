// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

#include "core/reading/read_shot.h"
#include "core/table/told_values.h"

namespace ferrule {

/// The images of a recorded shot as its tracks hold them, to be read again. What the record does not keep is not there:
/// which ball was in a hand counts as not seen.
///
/// reading: as it stands; its places before the shot count. times: other ones than the reading's.
[[nodiscard]] CutShot cutFromTracks(const ShotReading& reading, std::span<const Track> tracks,
                                    const std::optional<ShotTimes>& times = {});

/// A recorded shot read again from its tracks, as a person corrected them. Without tracks, or where nothing can be made
/// of them, what was read stays; knowledge.call is then all that is known of the target.
[[nodiscard]] ShotReading rereadShot(const ShotReading& reading, std::span<const Track> tracks,
                                     const MeasuredTable& measured, const ReadingKnowledge& knowledge = {},
                                     const std::optional<ShotTimes>& times = {});

/// The same shot with another pot that was meant: target, its line and the account of the miss are read again, the rest
/// stays as it was read. target: nothing when no pot was meant. outcomeSaid: a person said it, so it stays.
[[nodiscard]] ShotReading rereadTarget(const ShotReading& reading, std::span<const Track> tracks,
                                       const MeasuredTable& measured, const std::optional<PocketedBall>& target,
                                       bool outcomeSaid, const ReadingKnowledge& knowledge = {});

}  // namespace ferrule
