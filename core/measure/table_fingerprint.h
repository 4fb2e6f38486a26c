// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/base/progress.h"
#include "core/physics/fingerprint.h"
#include "core/record/record.h"

namespace ferrule {

/// Fits a table's fingerprint to every shot of a session that was read from a film, and keeps it with the session: the
/// table was like this on that day. now: when, for the record.
///
/// Errors: NotFound (the session, or no shot that can be simulated); those of fitFingerprint() and of Record;
/// Cancelled.
[[nodiscard]] Result<Fingerprint> fitSessionsFingerprint(Record& record, const SessionSummary& session,
                                                         UtcMilliseconds now, const JobControl& job = {});

/// What balls and cloth of a session's table are like, as far as anyone measured it: the session's own fingerprint, or
/// else the latest earlier one of the same table, or else the earliest later one, or else the literature's values.
/// Errors: those of Record; FileMalformed for a fingerprint that cannot be read.
[[nodiscard]] Result<PhysicsParameters> tableParameters(Record& record, SessionId session);

/// The newest session of that name. Errors: NotFound; those of Record.
[[nodiscard]] Result<SessionSummary> sessionNamed(Record& record, const std::string& name);

}  // namespace ferrule
