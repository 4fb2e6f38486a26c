// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/measure/said_of_shot.h"
#include "core/record/record.h"

namespace ferrule {

/// Why something that a person said cannot be.
enum class NotSaid {
  NoTarget,       ///< a pot, of which nobody knows ball and pocket
  NoReferee,      ///< a ruling, where no referee watched
  NoTrack,        ///< names to be swapped of balls that were not followed
  OutsideTracks,  ///< a strike or rest at a time that the shot's tracks do not hold
  LaterStands,    ///< a later correction in the frame rests on the one that is to be taken back
  StillPutIn,     ///< the frame is still being put in by hand, where it is undone and not corrected
};

/// A correction, or why there is none.
struct SayReport {
  std::optional<CorrectionId> correction;
  std::optional<NotSaid> why;

  bool operator==(const SayReport&) const = default;
};

/// Puts right what was read of a shot, and all that follows from it: the shot's own reading (target, cut, line, account
/// of the miss, what fell), and from that shot on in its frame the referee's rulings and, where two play, who played.
/// All of it is one correction of the record and is withdrawn as one (Record::withdrawCorrection). What the planner had
/// suggested before the shots stays as it was shown.
///
/// who: the person, for the record. Errors: NotFound for a shot or player that is not there; those of Record.
[[nodiscard]] Result<SayReport> sayOfShot(Record& record, ShotId shot, const ShotSaying& saying, const std::string& who,
                                          UtcMilliseconds when);

/// Undo of a correction and of all that followed from it. Only the latest of its frame can be taken back: what followed
/// from a later one rests on it. Nothing when it was done, or why not. Errors: NotFound for one that is gone; those of
/// Record.
[[nodiscard]] Result<std::optional<NotSaid>> takeBackCorrection(Record& record, FrameId frame, CorrectionId correction);

}  // namespace ferrule
