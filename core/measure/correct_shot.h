// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

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
  NotFilmed,      ///< a boundary between shots, or a placement, of a frame that was put in by hand
  NoNextShot,     ///< a shot to be joined with, behind the last of a frame
  NoPlacement,    ///< a placement that is to be corrected and is not there
  StillPutIn,     ///< the frame is still being put in by hand, where it is undone and not corrected
};

/// A correction, or why there is none.
struct SayReport {
  std::optional<CorrectionId> correction;
  std::optional<NotSaid> why;
  ShotId made = {};  ///< the shot that a split made; 0 for none

  bool operator==(const SayReport&) const = default;
};

/// Puts right what was read of a shot, and all that follows from it: the shot's own reading (target, cut, line, account
/// of the miss, what fell), and from that shot on in its frame the referee's rulings and, where two play, who played.
/// All of it is one correction of the record and is withdrawn as one (Record::withdrawCorrection). What stands
/// suggested beside the shots stays until judgeAnew (judge_session.h) works it out for what is known now.
///
/// who: the person, for the record. Errors: NotFound for a shot or player that is not there; those of Record.
[[nodiscard]] Result<SayReport> sayOfShot(Record& record, ShotId shot, const ShotSaying& saying, const std::string& who,
                                          UtcMilliseconds when);

/// What became of a correction that was to be taken back.
struct TakeBackReport {
  std::optional<NotSaid> why;  ///< LaterStands: nothing was changed
  /// Later ones that were said again without it: their numbers before and now, each changed at once with all others.
  std::vector<std::pair<CorrectionId, CorrectionId>> renewed;
  std::vector<std::pair<ShotId, ShotId>> remade;  ///< shots that later splits made: before and now
  std::optional<ShotSaying> saying;               ///< what was taken back, to be said again by a redo

  bool operator==(const TakeBackReport&) const = default;
};

/// Undo of any correction and of all that followed from it. Later ones of its frame are said again without it, by who
/// and when they were said; where one of them cannot be said without it, nothing is changed. Errors: NotFound for one
/// that is gone; those of Record.
[[nodiscard]] Result<TakeBackReport> takeBackCorrection(Record& record, FrameId frame, CorrectionId correction);

}  // namespace ferrule
