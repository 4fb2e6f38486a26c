// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/measure/hand_session.h"
#include "core/record/record.h"

namespace ferrule {

/// Where a frame that is put in by hand stands in a record.
struct HandPlace {
  SessionId session;
  FrameId frame;
  std::vector<PlayerId> players;  ///< in playing order
  UtcMilliseconds started = 0;    ///< when the session began

  bool operator==(const HandPlace&) const = default;
};

/// A frame with its place.
struct KeptHand {
  HandSession session;
  HandPlace place;
};

/// Begins a session with its first frame in a record; players that are not known yet are added.
/// Errors: those of Record.
[[nodiscard]] Result<KeptHand> beginHandSession(Record& record, const HandTerms& terms, SessionKind kind,
                                                UtcMilliseconds now);
/// Brings the record to where the frame stands: every shot but the last, which may still be changed, and the draft.
/// Called after each edit, nothing that was put in is lost when the program is. Errors: those of Record.
[[nodiscard]] Result<void> keepHandSession(Record& record, const KeptHand& hand);
/// Ends a frame with all its shots and begins the next one of the session. Errors: those of Record.
[[nodiscard]] Result<KeptHand> nextHandFrame(Record& record, const KeptHand& hand);
/// Ends frame and session; there is nothing to be resumed then. Errors: those of Record.
[[nodiscard]] Result<void> endHandSession(Record& record, const KeptHand& hand);
/// What was under way when the program ended; nothing when nothing was. Its undo begins anew.
/// Errors: those of Record; RecordBroken for a draft that cannot be read.
[[nodiscard]] Result<std::optional<KeptHand>> resumeHandSession(Record& record);

}  // namespace ferrule
