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

/// A fingerprint and the session that it was fitted to.
struct KnownFingerprint {
  Fingerprint fingerprint;
  std::string session;

  bool operator==(const KnownFingerprint&) const = default;
};

/// What anyone measured of a session's table: the session's own fingerprint, or else the latest earlier one of the same
/// table, or else the earliest later one; nothing where there is none.
/// Errors: those of Record; FileMalformed for a fingerprint that cannot be read.
[[nodiscard]] Result<std::optional<KnownFingerprint>> fingerprintFor(Record& record, SessionId session);
/// The latest fingerprint of a table of these measures with these balls, under whatever name. Errors: the same.
[[nodiscard]] Result<std::optional<KnownFingerprint>> latestFingerprint(Record& record, const MeasuredTable& measured);

/// The literature's values for a session's balls, with what fingerprintFor() determined. Errors: the same.
[[nodiscard]] Result<PhysicsParameters> tableParameters(Record& record, SessionId session);

/// The same for parameters of a position file: a coefficient that the file sets to other than the literature's stands.
[[nodiscard]] PhysicsParameters appliedWhereUsual(const Fingerprint& fingerprint, PhysicsParameters parameters,
                                                  const PhysicsParameters& literature);

/// The newest session of that name. Errors: NotFound; those of Record.
[[nodiscard]] Result<SessionSummary> sessionNamed(Record& record, const std::string& name);

}  // namespace ferrule
