// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/measure/table_fingerprint.h"

#include <algorithm>
#include <chrono>
#include <cstdio>

namespace ferrule {

namespace {

/// The day a session began, ISO 8601, UTC.
std::string dayOf(UtcMilliseconds time) {
  const std::chrono::sys_time<std::chrono::milliseconds> moment{std::chrono::milliseconds(time)};
  const std::chrono::year_month_day day{std::chrono::floor<std::chrono::days>(moment)};
  char text[16];
  std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                static_cast<unsigned>(day.day()));
  return text;
}

Result<std::vector<FingerprintShot>> filmedShots(Record& record, SessionId session) {
  const auto frames = record.frames(session);
  if (!frames) return tl::make_unexpected(frames.error());
  std::vector<FingerprintShot> filmed;
  for (const FrameSummary& frame : *frames) {
    const auto shots = record.shots(frame.id);
    if (!shots) return tl::make_unexpected(shots.error());
    for (const ShotSummary& summary : *shots) {
      auto shot = record.shot(summary.id);
      if (!shot) return tl::make_unexpected(shot.error());
      if (shot->tracks.empty()) continue;  // put in by hand
      ShotReading& reading = shot->reading;
      filmed.push_back({std::move(reading.before), std::move(shot->tracks), reading.strike_s, reading.rest_s,
                        reading.delivery, std::move(reading.events)});
    }
  }
  return filmed;
}

Result<std::optional<KnownFingerprint>> known(const Record& record, const FingerprintEntry& entry,
                                              const std::vector<SessionSummary>& sessions) {
  auto fingerprint = parseFingerprint(entry.content, record.path());
  if (!fingerprint) return tl::make_unexpected(fingerprint.error());
  const auto session = std::ranges::find(sessions, entry.session, &SessionSummary::id);
  return std::optional(
      KnownFingerprint{std::move(*fingerprint), session == sessions.end() ? std::string() : session->name});
}

}  // namespace

Result<Fingerprint> fitSessionsFingerprint(Record& record, const SessionSummary& session, UtcMilliseconds now,
                                           const JobControl& job) {
  const auto measured = record.tableOf(session.id);
  if (!measured) return tl::make_unexpected(measured.error());
  const auto shots = filmedShots(record, session.id);
  if (!shots) return tl::make_unexpected(shots.error());
  if (shots->empty()) return failure(ErrorCode::NotFound, "filmed shot", session.name);
  auto fingerprint = fitFingerprint(measured->table, parametersFor(measured->balls), *shots, job);
  if (!fingerprint) return fingerprint;
  fingerprint->table = session.tableName;
  fingerprint->date = dayOf(session.started);
  const FingerprintEntry entry{session.id, now, fingerprint->shots, fingerprintText(*fingerprint)};
  if (auto kept = record.keepFingerprint(entry); !kept) return tl::make_unexpected(kept.error());
  return fingerprint;
}

Result<std::optional<KnownFingerprint>> fingerprintFor(Record& record, SessionId session) {
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto fingerprints = record.fingerprintsOfTable(session);
  if (!fingerprints) return tl::make_unexpected(fingerprints.error());
  if (fingerprints->empty()) return std::optional<KnownFingerprint>();
  const auto startOf = [&](SessionId id) {
    const auto found = std::ranges::find(*sessions, id, &SessionSummary::id);
    return found == sessions->end() ? UtcMilliseconds{0} : found->started;
  };
  const UtcMilliseconds started = startOf(session);
  const FingerprintEntry* chosen = &fingerprints->front();
  for (const FingerprintEntry& entry : *fingerprints) {
    if (startOf(entry.session) <= started) chosen = &entry;
    if (entry.session == session) break;
  }
  return known(record, *chosen, *sessions);
}

Result<std::optional<KnownFingerprint>> latestFingerprint(Record& record, const MeasuredTable& measured) {
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  for (const SessionSummary& session : *sessions) {
    const auto entry = record.fingerprintOf(session.id);
    if (!entry) return tl::make_unexpected(entry.error());
    if (!*entry) continue;
    const auto table = record.tableOf(session.id);
    if (!table) return tl::make_unexpected(table.error());
    if (table->table == measured.table && table->balls == measured.balls) return known(record, **entry, *sessions);
  }
  return std::optional<KnownFingerprint>();
}

Result<PhysicsParameters> tableParameters(Record& record, SessionId session) {
  const auto measured = record.tableOf(session);
  if (!measured) return tl::make_unexpected(measured.error());
  const auto found = fingerprintFor(record, session);
  if (!found) return tl::make_unexpected(found.error());
  const PhysicsParameters literature = parametersFor(measured->balls);
  return *found ? applied((*found)->fingerprint, literature) : literature;
}

PhysicsParameters appliedWhereUsual(const Fingerprint& fingerprint, PhysicsParameters parameters,
                                    const PhysicsParameters& literature) {
  const PhysicsParameters fitted = applied(fingerprint, literature);
  const auto take = [&](auto PhysicsParameters::*field) {
    if (parameters.*field == literature.*field) parameters.*field = fitted.*field;
  };
  take(&PhysicsParameters::slidingFriction);
  take(&PhysicsParameters::rollingFriction);
  take(&PhysicsParameters::spinDecay_radps2);
  take(&PhysicsParameters::cushionRestitution);
  take(&PhysicsParameters::cushionFriction);
  take(&PhysicsParameters::ballRestitution);
  take(&PhysicsParameters::ballFriction);
  return parameters;
}

Result<SessionSummary> sessionNamed(Record& record, const std::string& name) {
  const auto sessions = record.sessions();
  if (!sessions) return tl::make_unexpected(sessions.error());
  const auto found = std::ranges::find(*sessions, name, &SessionSummary::name);
  if (found == sessions->end()) return failure(ErrorCode::NotFound, name, record.path());
  return *found;
}

}  // namespace ferrule
