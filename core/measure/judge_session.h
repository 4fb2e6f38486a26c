// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <vector>

#include "core/base/progress.h"
#include "core/planner/shot_review.h"
#include "core/record/record.h"

namespace ferrule {

struct JudgeOptions {
  PlayerLevel level = PlayerLevel::Club;  ///< of a player of whom the record knows no aim
  long mostSimulations = 20000;           ///< for each position; never a time, so that the same record gives the same
  std::uint64_t seed = 1;
  UtcMilliseconds now = 0;  ///< when the plans are worked out, for the corrections that they follow from
  bool again = false;       ///< also shots beside which this planner's plans stand already

  bool operator==(const JudgeOptions&) const = default;
};

/// Why nothing stands beside a shot.
enum class NotJudged {
  NoRuling,   ///< nobody ruled it: without a game no shot is better than another
  FrameOver,  ///< struck after the frame had ended
  NoCueBall,  ///< its place before the shot is not known
  NoPlan,     ///< nothing could be played, or the position cannot stand (balls overlap)
};

/// A shot with the plans as they stood before it.
struct JudgedShot {
  ShotSummary shot;
  Suggestion suggestion;
  std::optional<NotJudged> why;      ///< nothing where there are plans
  std::optional<ShotReview> review;  ///< nothing where no plan matches what was meant, or nobody knows it
};

struct JudgeReport {
  int judged = 0;
  int known = 0;    ///< were judged before and left alone
  int without = 0;  ///< nothing could be said

  bool operator==(const JudgeReport&) const = default;
};

/// Suggested against taken, for every shot of a session: the plans for that player as they stood before the shot, the
/// taken plan matched to them, choice loss and delivery loss, kept beside the shot. Whether plans had been shown to the
/// player stays as it was noted.
///
/// A player's scatter is the record's as it is now, the table's cloth that of the session. A shot put in by hand has no
/// delivery: its meant pot is matched to the plan of the same ball and pocket, where the list has one.
/// Each shot is kept on its own: cancelled, what was judged stays.
/// Errors: those of Record and Planner::create(); Cancelled.
[[nodiscard]] Result<JudgeReport> judgeSession(Record& record, SessionId session, const JudgeOptions& options,
                                               const JobControl& job = {},
                                               const std::function<void(const JudgedShot&)>& observer = {});

/// The same for one frame after something in it was corrected: only shots whose situation is another one than that for
/// which the plans beside them were worked out, and none where nothing was ever suggested in the frame. What stood
/// there stays in the record, with the correction (Record::replaceSuggestion). Errors: NotFound for an unknown frame;
/// as above.
[[nodiscard]] Result<JudgeReport> judgeAnew(Record& record, SessionId session, FrameId frame,
                                            const JudgeOptions& options, const JobControl& job = {},
                                            const std::function<void(const JudgedShot&)>& observer = {});

}  // namespace ferrule
